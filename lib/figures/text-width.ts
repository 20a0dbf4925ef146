export type TextWeight = 'regular' | 'strong';

/** Advance widths in hundredths of an em, measured in a browser for the sans face; tabular figures. */
const ADVANCES: Readonly<Record<TextWeight, readonly (readonly [string, number])[]>> = {
  regular: [
    [' ', 20],
    ["',.:;ij|·’", 25],
    ['!fIl', 28],
    ['()[]{}-t', 31],
    ['/\\r°²', 36],
    ['"*?szJcx', 43],
    ['vyLY–', 48],
    ['0123456789#$+<=>F^_aegk~−×±ESVXZ', 51],
    ['ACThnouPRbdpq`', 56],
    ['BKDG&', 61],
    ['HOQNU', 66],
    ['Mw', 73],
    ['W—%m@', 83],
    ['…', 94],
  ],
  strong: [
    [' ', 20],
    ["',.:;Ilij|·’", 28],
    ['!()-[]{}f/\\t°', 32],
    ['r²', 38],
    ['*?csz', 44],
    ['"x–JLYevy', 50],
    ['0123456789#$+<=>FZ^agk~−×±CESTVXo_`', 53],
    ['AbdhnpquP', 57],
    ['BKRDG&', 62],
    ['HNUOQ', 67],
    ['Mw', 74],
    ['W—%m@', 84],
    ['…', 96],
  ],
};

/** For letters outside the table: wider than most, so that an estimate errs on the safe side. */
const UNKNOWN = 62;

const tables = {
  regular: new Map(ADVANCES.regular.flatMap(([letters, width]) => [...letters].map((letter) => [letter, width]))),
  strong: new Map(ADVANCES.strong.flatMap(([letters, width]) => [...letters].map((letter) => [letter, width]))),
};

/** The width of a text in pixels, estimated without a browser from average advance widths. */
export const textWidth = (text: string, size: number, weight: TextWeight = 'regular'): number => {
  const table = tables[weight];
  let hundredths = 0;
  for (const letter of text) hundredths += table.get(letter === '\u00A0' ? ' ' : letter) ?? UNKNOWN;
  return (hundredths * size) / 100;
};
