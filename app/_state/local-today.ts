import { parseIsoDate, type IsoDate } from '../../lib/core/iso-date';

/** The calendar day on this machine. */
export const localToday = (): IsoDate => {
  const now = new Date();
  const two = (value: number): string => String(value).padStart(2, '0');
  const text = `${String(now.getFullYear())}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  const date = parseIsoDate(text);
  if (date === undefined) throw new Error('the clock gives no date');
  return date;
};
