const LONGEST = 80;

// Marks that turn the direction of text, and control characters: shown as their code so that a cell cannot disguise itself.
const isHidden = (code: number): boolean =>
  code < 0x20 ||
  (code >= 0x7f && code < 0xa0) ||
  code === 0x061c ||
  code === 0xfeff ||
  (code >= 0x200b && code <= 0x200f) ||
  (code >= 0x202a && code <= 0x202e) ||
  (code >= 0x2066 && code <= 0x2069);

/** A file's cell as a person may see it: text only, hidden characters by their code, at most 80 characters. */
export const shownCell = (value: string): { readonly text: string; readonly cut: boolean; readonly length: number } => {
  const characters = [...value];
  const text = characters
    .slice(0, LONGEST)
    .map((character) => {
      const code = character.codePointAt(0) ?? 0;
      return isHidden(code) ? `[U+${code.toString(16).toUpperCase().padStart(4, '0')}]` : character;
    })
    .join('');
  return { text, cut: characters.length > LONGEST, length: characters.length };
};
