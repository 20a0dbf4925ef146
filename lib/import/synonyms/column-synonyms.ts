import { COLUMN_BY_NAME } from '../columns';
import { plainTokens } from '../plain-text';
import { CONDITION_SYNONYMS } from './condition-synonyms';
import { IDENTITY_SYNONYMS, VAGUE_SYNONYMS, WEAK_SYNONYMS } from './identity-synonyms';
import { MEASURE_SYNONYMS } from './measure-synonyms';

/** What a heading means: the canonical column, or `visit_datetime` for a visit's date and time in one cell; 0–1 how surely. */
export interface SynonymHit {
  readonly to: string;
  readonly sure: number;
}

export const DATE_AND_TIME = 'visit_datetime';

const DATE_AND_TIME_SYNONYMS =
  'date time|datetime|date and time|timestamp|time stamp|visit datetime|measured at|measured on|recorded at|measurement time stamp|zeitstempel|datum uhrzeit|datum zeit|datum und uhrzeit|messzeitpunkt|date heure|date et heure|fecha hora|fecha y hora|data ora|data e ora|datum tijd|data hora';

const UMLAUTS: Readonly<Record<string, string>> = { ä: 'ae', ö: 'oe', ü: 'ue', œ: 'oe' };

/** A heading's key: its words without accents, run together. */
const keysOf = (heading: string): readonly string[] => [
  plainTokens(heading).join(''),
  plainTokens(heading.replace(/[äöüœ]/g, (letter) => UMLAUTS[letter] ?? letter)).join(''),
];

const entries = (to: string, headings: string, sure: number): readonly (readonly [string, SynonymHit])[] =>
  headings.split('|').flatMap((heading) => keysOf(heading).map((key) => [key, { to, sure }] as const));

const known = ([to]: readonly [string, string]): boolean => COLUMN_BY_NAME.has(to);

const HITS: ReadonlyMap<string, SynonymHit> = new Map([
  ...Object.entries(VAGUE_SYNONYMS).flatMap(([to, headings]) => entries(to, headings, 0.4)),
  ...Object.entries(WEAK_SYNONYMS)
    .filter(known)
    .flatMap(([to, headings]) => entries(to, headings, 0.6)),
  ...[IDENTITY_SYNONYMS, MEASURE_SYNONYMS, CONDITION_SYNONYMS]
    .flatMap((table) => Object.entries(table).filter(known))
    .flatMap(([to, headings]) => entries(to, headings, 0.9)),
  ...entries(DATE_AND_TIME, DATE_AND_TIME_SYNONYMS, 0.9),
  ...[...COLUMN_BY_NAME.keys()].map((name) => [keysOf(name)[0] ?? name, { to: name, sure: 0.97 }] as const),
]);

/** The column that a heading's words (see `plainTokens`) stand for, if any. */
export const synonymOf = (tokens: readonly string[]): SynonymHit | undefined => HITS.get(tokens.join(''));
