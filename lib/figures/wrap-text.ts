import { textWidth, type TextWeight } from './text-width';

const splitLongWord = (word: string, width: number, size: number, weight: TextWeight): string[] => {
  const parts: string[] = [];
  let part = '';
  for (const letter of word) {
    if (part !== '' && textWidth(part + letter, size, weight) > width) {
      parts.push(part);
      part = '';
    }
    part += letter;
  }
  return [...parts, part];
};

/** Breaks a text into lines that fit a width in pixels, at spaces; a word wider than a line is broken inside. */
export const wrapText = (text: string, width: number, size: number, weight: TextWeight = 'regular'): string[] => {
  const words = text
    .split(/[ \t\n\r]+/)
    .filter((word) => word !== '')
    .flatMap((word) => splitLongWord(word, width, size, weight));
  const lines: string[] = [];
  let line = '';
  for (const word of words) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && textWidth(longer, size, weight) > width) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return line === '' ? lines : [...lines, line];
};

/** The text cut to one line with an ellipsis where it does not fit. */
export const fitText = (text: string, width: number, size: number, weight: TextWeight = 'regular'): string => {
  if (textWidth(text, size, weight) <= width) return text;
  const letters = [...text];
  while (letters.length > 0 && textWidth(`${letters.join('').trimEnd()}…`, size, weight) > width) letters.pop();
  return `${letters.join('').trimEnd()}…`;
};
