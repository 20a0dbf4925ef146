import type { NumberKind } from './number-format';

const DAY_SECONDS = 86_400;
const LAST_SERIAL = 2_958_466;

const two = (value: number): string => String(value).padStart(2, '0');

const clock = (seconds: number): string =>
  `${two(Math.floor(seconds / 3600))}:${two(Math.floor(seconds / 60) % 60)}:${two(seconds % 60)}`;

/** Days counted as if 1900 had been a leap year: the 60th never was, the first 59 stand one higher. */
const dayText = (day: number, is1904: boolean): string | null => {
  if (!is1904 && day === 60) return null;
  const start = is1904 ? Date.UTC(1904, 0, 1) : Date.UTC(1899, 11, day < 60 ? 31 : 30);
  return new Date(start + day * DAY_SECONDS * 1000).toISOString().slice(0, 10);
};

/**
 * A spreadsheet's serial number as ISO text: `YYYY-MM-DD`, `YYYY-MM-DDTHH:MM:SS` where it has a time of day or is shown
 * with one, `HH:MM:SS` below one day; a duration as hours (any number of them), minutes, seconds. To the second. The
 * number itself where it is no such thing.
 *
 * Source: ECMA-376-1, sections 18.17.4.1 to 18.17.4.3.
 */
export const serialToIso = (serial: number, kind: NumberKind, is1904: boolean): string | number => {
  if (kind === 'number' || !(serial >= 0 && serial < LAST_SERIAL)) return serial;
  const total = Math.round(serial * DAY_SECONDS);
  if (kind === 'duration') return clock(total);
  const seconds = total % DAY_SECONDS;
  const day = (total - seconds) / DAY_SECONDS;
  if (day === 0 && (kind === 'time' || !is1904)) return clock(seconds);
  const date = dayText(day, is1904);
  if (date === null) return serial;
  return kind === 'date' && seconds === 0 ? date : `${date}T${clock(seconds)}`;
};
