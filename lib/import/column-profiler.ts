import type { RawCell } from '../formats/raw-table';
import { cellText } from './cell-reader';
import type { ColumnProfile } from './mapping';
import { numberInCell } from './number-in-cell';
import { plainText } from './plain-text';
import { readDate } from './read-date';
import { holdsMarks } from './without-marks';

/** Gathers one column's profile cell by cell; its memory does not grow with the rows. */
export interface ColumnProfiler {
  take(cell: RawCell): void;
  profile(place: number, name: string): ColumnProfile;
}

interface Seen {
  readonly number: 'typed' | 'point' | 'comma' | 'either' | null;
  readonly value: number | null;
  readonly unit: string | null;
  readonly ymd: boolean;
  readonly dmy: boolean;
  readonly mdy: boolean;
  readonly serial: boolean;
}

const SAMPLES = 5;
const WORDS = 40;
const LONGEST = 60;
const REMEMBERED = 1000;
/** Days of a spreadsheet's count from 1910 to 2099. */
const SERIAL = [3655, 73_050] as const;

const NOTHING: Seen = {
  number: null,
  value: null,
  unit: null,
  ymd: false,
  dmy: false,
  mdy: false,
  serial: false,
};

const look = (text: string): Seen => {
  if (text.length > LONGEST) return NOTHING;
  const found = numberInCell(text);
  const value = found?.value ?? null;
  const bare = found?.unit === null && (found.marks === 'whole' || found.marks === 'point');
  return {
    number: found === undefined ? null : found.marks === 'whole' ? 'typed' : found.marks,
    value,
    unit: found?.unit ?? null,
    ymd: readDate(text, 'ymd') !== undefined,
    dmy: readDate(text, 'dmy') !== undefined,
    mdy: readDate(text, 'mdy') !== undefined,
    serial: bare && value !== null && value >= SERIAL[0] && value <= SERIAL[1],
  };
};

/** A profiler for one column. */
export const columnProfiler = (): ColumnProfiler => {
  const numbers = { typed: 0, point: 0, comma: 0, either: 0 };
  const dates = { ymd: 0, dmy: 0, mdy: 0, serial: 0 };
  const samples: string[] = [];
  const units = new Set<string>();
  let known = new Map<string, Seen>();
  let words: Map<string, number> | null = new Map();
  let [filled, low, high] = [0, Infinity, -Infinity];

  const note = (text: string): void => {
    if (samples.length < SAMPLES && !samples.includes(text)) samples.push(text);
    if (words === null) return;
    words.set(text, (words.get(text) ?? 0) + 1);
    if (words.size > WORDS || text.length > LONGEST * 4) words = null;
  };

  return {
    take: (cell) => {
      const raw = cellText(cell);
      const text = typeof cell === 'string' && holdsMarks(raw) ? plainText(raw) : raw.trim();
      if (text === '') return;
      filled += 1;
      note(text);
      let seen = known.get(text);
      if (seen === undefined) {
        if (known.size >= REMEMBERED) known = new Map();
        seen = look(text);
        known.set(text, seen);
      }
      if (seen.number !== null) numbers[typeof cell === 'number' ? 'typed' : seen.number] += 1;
      if (seen.value !== null && seen.value < low) low = seen.value;
      if (seen.value !== null && seen.value > high) high = seen.value;
      if (seen.number !== null && units.size < 4) units.add(seen.unit ?? '');
      if (seen.ymd) dates.ymd += 1;
      if (seen.dmy) dates.dmy += 1;
      if (seen.mdy) dates.mdy += 1;
      if (seen.serial) dates.serial += 1;
    },
    profile: (place, name) => ({
      place,
      name,
      filled,
      samples: [...samples],
      words: words === null ? null : [...words].map(([word, count]) => ({ word, count })),
      numbers: { ...numbers },
      range: low <= high ? { low, high } : null,
      dates: { ...dates },
      units: [...units],
    }),
  };
};
