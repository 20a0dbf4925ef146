import type { RawCell } from '../formats/raw-table';
import { cellText } from './cell-reader';
import type { ColumnProfile } from './mapping';
import { isMissingCode, isMissingWord } from './missing-words';
import { numberInCell } from './number-in-cell';
import { plainText } from './plain-text';
import { readDate } from './read-date';
import { holdsMarks } from './holds-marks';

/** Gathers one column's profile cell by cell; its memory does not grow with the rows. */
export interface ColumnProfiler {
  take(cell: RawCell): void;
  profile(place: number, name: string): ColumnProfile;
}

interface Seen {
  readonly text: string;
  readonly number: 'typed' | 'point' | 'comma' | 'either' | null;
  readonly value: number | null;
  readonly unit: string | null;
  readonly ymd: boolean;
  readonly dmy: boolean;
  readonly mdy: boolean;
  readonly serial: boolean;
  readonly isMissing: boolean;
  readonly hasShortYear: boolean;
  count: number;
}

const SAMPLES = 5;
const WORDS = 40;
const LONGEST = 60;
const REMEMBERED = 2000;
/** `4/3/2025`, or eight digits. */
const SHORTEST_DATE = 8;
/** Days of a spreadsheet's count from 1910 to 2099. */
const SERIAL = [3655, 73_050] as const;

const SHORT_YEAR = /^\d{1,2}([./-]) ?\d{1,2}\1 ?\d{2}(?: .*)?$/;

const NOTHING = {
  number: null,
  value: null,
  unit: null,
  ymd: false,
  dmy: false,
  mdy: false,
  serial: false,
  isMissing: false,
  hasShortYear: false,
} as const;

const look = (text: string, typed: boolean): Seen => {
  if (text.length > LONGEST || !/\d/.test(text)) return { ...NOTHING, text, isMissing: isMissingWord(text), count: 1 };
  const found = numberInCell(text);
  const value = found?.value ?? null;
  const bare = found?.unit === null && (found.marks === 'whole' || found.marks === 'point');
  const marks = found === undefined ? null : found.marks === 'whole' ? 'typed' : found.marks;
  const isDate = found === undefined || text.length >= SHORTEST_DATE;
  const reads = (order: 'ymd' | 'dmy' | 'mdy'): boolean => isDate && readDate(text, order) !== undefined;
  return {
    text,
    number: typed && found !== undefined ? 'typed' : marks,
    value,
    unit: found?.unit ?? null,
    ymd: reads('ymd'),
    dmy: reads('dmy'),
    mdy: reads('mdy'),
    isMissing: isMissingWord(text),
    hasShortYear: SHORT_YEAR.test(text),
    serial: bare && value !== null && value >= SERIAL[0] && value <= SERIAL[1],
    count: 1,
  };
};

const counted = (words: ReadonlyMap<string, number>) => [...words].map(([word, count]) => ({ word, count }));

/** A profiler for one column. Equal cells are looked at once and counted. */
export const columnProfiler = (): ColumnProfiler => {
  const numbers = { typed: 0, point: 0, comma: 0, either: 0 };
  const dates = { ymd: 0, dmy: 0, mdy: 0, serial: 0, short: 0 };
  const samples: string[] = [];
  const units = new Set<string>();
  const known = new Map<RawCell, Seen>();
  const words = new Map<string, number>();
  const [missing, codes] = [new Map<string, number>(), new Map<string, number>()];
  let fewWords = true;
  let [filled, low, high] = [0, Infinity, -Infinity];

  const countWord = ({ text, count }: Seen): void => {
    if (!fewWords) return;
    words.set(text, (words.get(text) ?? 0) + count);
    fewWords = words.size <= WORDS && text.length <= LONGEST * 4;
  };
  const add = (seen: Seen): void => {
    const { text, count, value } = seen;
    if (text === '') return;
    if (seen.isMissing) {
      missing.set(text, (missing.get(text) ?? 0) + count);
      return;
    }
    if (value !== null && isMissingCode(value)) codes.set(text, (codes.get(text) ?? 0) + count);
    filled += count;
    countWord(seen);
    if (seen.number !== null) numbers[seen.number] += count;
    if (seen.ymd) dates.ymd += count;
    if (seen.dmy) dates.dmy += count;
    if (seen.mdy) dates.mdy += count;
    if (seen.serial) dates.serial += count;
    if (seen.hasShortYear) dates.short += count;
  };
  const flush = (): void => {
    known.forEach(add);
    known.clear();
  };
  const meet = (cell: RawCell): void => {
    const raw = cellText(cell);
    const text = holdsMarks(raw) ? plainText(raw) : raw.trim();
    const seen = look(text, typeof cell === 'number');
    if (known.size >= REMEMBERED) flush();
    known.set(cell, seen);
    if (text === '' || seen.isMissing) return;
    if (samples.length < SAMPLES && !samples.includes(text)) samples.push(text);
    // Zero is the same in every unit, and no code is in any.
    const figure = seen.value === null || seen.value === 0 || isMissingCode(seen.value) ? null : seen.value;
    if (figure !== null && figure < low) low = figure;
    if (figure !== null && figure > high) high = figure;
    if (seen.number !== null && units.size < 4) units.add(seen.unit ?? '');
  };

  return {
    take: (cell) => {
      const seen = known.get(cell);
      if (seen === undefined) meet(cell);
      else seen.count += 1;
    },
    profile: (place, name) => {
      flush();
      return {
        place,
        name,
        filled,
        samples: [...samples],
        words: fewWords ? [...words].map(([word, count]) => ({ word, count })) : null,
        numbers: { ...numbers },
        range: low <= high ? { low, high } : null,
        dates: { ...dates },
        units: [...units],
        missing: counted(missing),
        codes: counted(codes),
      };
    },
  };
};
