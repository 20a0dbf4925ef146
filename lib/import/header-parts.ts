import { plainTokens } from './plain-text';
import { unitOfLongWord, unitOfWord, type HeaderUnit } from './unit-words';

/** A heading taken apart: its words, and what else it says. */
export interface HeaderParts {
  /** All words, units and numbers among them. */
  readonly all: readonly string[];
  /** The words that are left when unit, frequency and number are taken off. */
  readonly words: readonly string[];
  readonly unit: HeaderUnit | null;
  readonly frequencyKHz: number | null;
  readonly number: number | null;
}

const FREQUENCY = /(\d+(?:[.,]\d+)?)[\s_]*(k?)hz(?![a-z])/i;
const BRACKETS = /[([{<]([^)\]}>]*)[)\]}>]/g;
const AFTER_SLASH = /[,/]\s*([^\s,/]+(?:\/s)?)\s*$/;
/** Words that say how a cell is written. */
const PATTERN_WORDS = new Set('dd ddmm mm yyyy yy jjjj aaaa tt gg hh ss ddmmyyyy mmddyyyy'.split(' '));

/** Words that list what a cell can hold. */
const VALUE_WORDS = new Set('f m w d x y n j yes no ja nein oui non si 0 1 2 female male'.split(' '));

const isPattern = (text: string): boolean => {
  const tokens = plainTokens(text);
  return [PATTERN_WORDS, VALUE_WORDS].some((known) => tokens.length > 1 && tokens.every((token) => known.has(token)));
};

const unitAtEnd = (words: readonly string[]): { readonly unit: HeaderUnit; readonly length: number } | undefined => {
  for (const length of [2, 1]) {
    if (words.length <= length) continue;
    const unit = unitOfWord(words.slice(-length).join(''));
    if (unit !== undefined && unit !== 'm/s') return { unit, length };
  }
  return words.slice(-2).join('/') === 'm/s' ? { unit: 'm/s', length: 2 } : undefined;
};

/** Takes a heading apart: `Weight (lb)`, `R 50kHz`, `Xc_2 [Ohm]`, `Waist, in`, `Hours since exercise`. */
export const headerParts = (header: string): HeaderParts => {
  const all = plainTokens(header);
  let unit: HeaderUnit | null = null;
  let frequencyKHz: number | null = null;
  const withoutFrequency = header.replace(FREQUENCY, (_, value: string, kilo: string) => {
    frequencyKHz = Number(value.replace(',', '.')) / (kilo === '' ? 1000 : 1);
    return ' ';
  });
  const withoutBrackets = withoutFrequency.replace(BRACKETS, (_, inside: string) => {
    const named = unitOfWord(inside);
    if (named === undefined && !isPattern(inside)) return ` ${inside} `;
    unit ??= named ?? null;
    return ' ';
  });
  const afterSlash = AFTER_SLASH.exec(withoutBrackets);
  const slashUnit = unit === null && afterSlash !== null ? unitOfWord(afterSlash[1] ?? '') : undefined;
  if (slashUnit !== undefined) unit = slashUnit;
  let words = plainTokens(slashUnit === undefined ? withoutBrackets : withoutBrackets.replace(AFTER_SLASH, ' ')).filter(
    (word) => !PATTERN_WORDS.has(word) || word === 'mm' || word === 'yy',
  );
  const atEnd = unit === null ? unitAtEnd(words) : undefined;
  if (atEnd !== undefined) {
    unit = atEnd.unit;
    words = words.slice(0, -atEnd.length);
  }
  const long = unit === null ? words.find((word) => unitOfLongWord(word) !== undefined) : undefined;
  if (long !== undefined && words.length > 1) {
    unit = unitOfLongWord(long) ?? null;
    words = words.filter((word) => word !== long);
  }
  const numbers = words.filter((word) => /^\d{1,4}$/.test(word));
  const number = numbers.length === 1 ? Number(numbers[0]) : null;
  return {
    all,
    words: number === null ? words : words.filter((word) => word !== numbers[0]),
    unit,
    frequencyKHz,
    number,
  };
};
