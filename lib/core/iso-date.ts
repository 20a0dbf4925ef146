/** A calendar date `YYYY-MM-DD` of the proleptic Gregorian calendar, without a time zone. */
export type IsoDate = string & { readonly __brand: 'IsoDate' };

const PATTERN = /^(\d{4})-(\d{2})-(\d{2})$/;

/** Days since 1970-01-01 of a valid date. */
export const dayNumber = (date: IsoDate): number => {
  const match = PATTERN.exec(date);
  if (match === null) return Number.NaN;
  return Date.UTC(Number(match[1]), Number(match[2]) - 1, Number(match[3])) / 86_400_000;
};

/** The date that lies `days` after 1970-01-01. */
export const fromDayNumber = (days: number): IsoDate =>
  new Date(days * 86_400_000).toISOString().slice(0, 10) as IsoDate;

/** Parses `YYYY-MM-DD`; undefined for any other text or a day that does not exist. */
export const parseIsoDate = (text: string): IsoDate | undefined => {
  if (!PATTERN.test(text)) return undefined;
  const days = dayNumber(text as IsoDate);
  if (!Number.isFinite(days)) return undefined;
  return fromDayNumber(days) === text ? (text as IsoDate) : undefined;
};

/** The date `days` later (earlier when negative). */
export const addDays = (date: IsoDate, days: number): IsoDate => fromDayNumber(dayNumber(date) + days);

/** Whole days from `from` to `to`. */
export const daysBetween = (from: IsoDate, to: IsoDate): number => dayNumber(to) - dayNumber(from);

/** The Monday of the date's week. */
export const mondayOf = (date: IsoDate): IsoDate => {
  const days = dayNumber(date);
  return fromDayNumber(days - ((((days + 3) % 7) + 7) % 7));
};
