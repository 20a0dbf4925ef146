import { lookupWord } from './plain-text';

/**
 * Texts that say that a cell holds nothing, in English, German, French, Spanish, Italian, Dutch and Portuguese, and what
 * spreadsheets and databases write for it, separated by `|`: *common practice, no source*.
 */
const WORDS =
  'na|n/a|n.a.|n.a|n. a.|n/d|nd|n.d.|n.d|n. d.|-|--|---|–|—|?|??|.|..|…|null|nil|nan|<na>|\\n|missing|unknown|not available|' +
  'not measured|not known|not recorded|k.a.|k. a.|k.a|keine angabe|unbekannt|nicht gemessen|inconnu|non mesuré|' +
  'non connu|desconocido|sin datos|s/d|no medido|sconosciuto|non misurato|onbekend|niet gemeten|desconhecido|não medido|' +
  '#n/a|#na|#nv|#div/0!|#value!|#ref!|#name?|#num!|#null!|#wert!|#bezug!|#zahl!|#error!';

/** Lower case, spaces as one. */
export const MISSING_WORDS: ReadonlySet<string> = new Set(WORDS.split('|'));

const LONGEST = Math.max(...[...MISSING_WORDS].map((word) => word.length));

/** Whether a cell's text says that it holds nothing (`N/A`, `-`, `#DIV/0!`). */
export const isMissingWord = (text: string): boolean => text.length <= LONGEST && MISSING_WORDS.has(lookupWord(text));

/** Numbers that clinics write for a missing one; below zero they can be nothing else in any column. */
const CODES: ReadonlySet<number> = new Set([-1, -9, -99, -999, -9999, -99999, 999, 9999, 99999]);

/** Whether a number is one that often stands for a missing value. */
export const isMissingCode = (value: number): boolean => CODES.has(value);

/** The codes for SQL. */
export const MISSING_CODES: readonly number[] = [...CODES];
