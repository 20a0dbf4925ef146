import { parseIsoDate, type IsoDate } from '../core/iso-date';

const DAYS_OF_MONTH = 31;

/** The same day so many months later; the last day of the month where it has no such day. */
const monthsAfter = (date: IsoDate, months: number): IsoDate => {
  const [year = 0, month = 1, day = 1] = date.split('-').map(Number);
  const place = year * 12 + (month - 1) + months;
  const two = (value: number): string => String(value).padStart(2, '0');
  const start = `${String(Math.floor(place / 12)).padStart(4, '0')}-${two((place % 12) + 1)}`;
  for (let last = Math.min(day, DAYS_OF_MONTH); last > 0; last -= 1) {
    const found = parseIsoDate(`${start}-${two(last)}`);
    if (found !== undefined) return found;
  }
  throw new Error('a month has no day');
};

/** Until when a clinic may be kept, counted from its last visit, and whether that day is past. */
export const retention = (
  months: number | null,
  lastVisit: IsoDate | null,
  today: IsoDate,
): { readonly keepUntil: IsoDate | null; readonly overdue: boolean } => {
  if (months === null || lastVisit === null) return { keepUntil: null, overdue: false };
  const keepUntil = monthsAfter(lastVisit, months);
  return { keepUntil, overdue: today > keepUntil };
};
