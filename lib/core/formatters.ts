import type { IsoDate } from './iso-date';
import { SI_UNITS, shownUnit, type Ucum, type UnitPreference } from './units';

/** Everything that turns a number or a date into words, for one language and one unit preference. */
export interface Formatters {
  readonly locale: string;
  readonly units: UnitPreference;
  /** A number with exactly `digits` decimals; what rounds to zero has no sign. */
  number(value: number, digits?: number): string;
  /** A change: always with a sign, a true minus, zero without one. */
  signed(value: number, digits?: number): string;
  /** A proportion 0–1 as a percentage. */
  percent(share: number, digits?: number): string;
  /** `4 March 2025`. */
  date(date: IsoDate): string;
  /** `Tuesday 4 March 2025`. */
  weekday(date: IsoDate): string;
  /** `4 Mar 2025`, for tables. */
  dateShort(date: IsoDate): string;
  /** `4 Mar`, for axes. */
  dayMonth(date: IsoDate): string;
  /** A measured value in the preferred unit, without the unit. */
  value(value: number, unit: Ucum, digits: number): string;
  /** A change of a measured value in the preferred unit, signed, without the unit. */
  change(value: number, unit: Ucum, digits: number): string;
  /** A measured value with its unit, joined by a no-break space. */
  quantity(value: number, unit: Ucum, digits: number): string;
  /** An estimate with its unit to so many significant figures of the number that is shown: rounding comes after the unit. */
  significant(value: number, unit: Ucum, figures: number): string;
  /** The preferred unit's label. */
  unit(unit: Ucum): string;
  /** A body height in the preferred unit, with its unit. */
  height(centimetres: number): string;
  /** One of two forms by the language's plural rule, `#` replaced by the number. */
  plural(n: number, one: string, other: string): string;
  /** Words joined by the language's list rule. */
  list(items: readonly string[]): string;
}

const NO_BREAK_SPACE = '\u00A0';
const MINUS = '\u2212';

/** Formatters through `Intl` for a BCP 47 language tag. Dates are calendar days: the time zone is always UTC. */
export const createFormatters = (locale = 'en-GB', units: UnitPreference = SI_UNITS): Formatters => {
  const numbers = new Map<string, Intl.NumberFormat>();
  const numberFormat = (options: Intl.NumberFormatOptions): Intl.NumberFormat => {
    const key = JSON.stringify(options);
    const known = numbers.get(key);
    if (known !== undefined) return known;
    const made = new Intl.NumberFormat(locale, options);
    numbers.set(key, made);
    return made;
  };
  const dateFormat = (options: Intl.DateTimeFormatOptions): ((date: IsoDate) => string) => {
    const format = new Intl.DateTimeFormat(locale, { ...options, timeZone: 'UTC' });
    return (date) => format.format(new Date(`${date}T00:00:00Z`));
  };
  const pluralRules = new Intl.PluralRules(locale);
  const listFormat = new Intl.ListFormat(locale, { type: 'conjunction' });
  const fixed = (digits: number): Intl.NumberFormatOptions => ({
    minimumFractionDigits: digits,
    maximumFractionDigits: digits,
  });
  const number = (value: number, digits = 0): string =>
    numberFormat({ ...fixed(digits), signDisplay: 'negative' })
      .format(value)
      .replace('-', MINUS);
  const signed = (value: number, digits = 0): string =>
    numberFormat({ ...fixed(digits), signDisplay: 'exceptZero' })
      .format(value)
      .replace('-', MINUS);
  const shown = (unit: Ucum): ReturnType<typeof shownUnit> => shownUnit(unit, units);
  const withUnit = (text: string, { label }: ReturnType<typeof shownUnit>): string => {
    if (label === '') return text;
    return label === '°' ? `${text}°` : `${text}${NO_BREAK_SPACE}${label}`;
  };
  const quantity = (value: number, unit: Ucum, digits: number): string =>
    withUnit(number(value * shown(unit).factor, digits), shown(unit));
  const significant = (value: number, unit: Ucum, figures: number): string => {
    const rounded = Number((value * shown(unit).factor).toPrecision(figures));
    const leading = Math.floor(Math.log10(Math.abs(rounded)));
    const decimals = rounded === 0 ? 0 : Math.max(0, figures - 1 - leading);
    return withUnit(number(rounded, decimals), shown(unit));
  };
  return {
    locale,
    units,
    number,
    signed,
    percent: (share, digits = 0) => `${number(share * 100, digits)}${NO_BREAK_SPACE}%`,
    date: dateFormat({ day: 'numeric', month: 'long', year: 'numeric' }),
    weekday: dateFormat({ weekday: 'long', day: 'numeric', month: 'long', year: 'numeric' }),
    dateShort: dateFormat({ day: 'numeric', month: 'short', year: 'numeric' }),
    dayMonth: dateFormat({ day: 'numeric', month: 'short' }),
    value: (value, unit, digits) => number(value * shown(unit).factor, digits),
    change: (value, unit, digits) => signed(value * shown(unit).factor, digits),
    quantity,
    significant,
    unit: (unit) => shown(unit).label,
    height: (centimetres) => {
      if (units.length === 'cm') return quantity(centimetres, 'cm', 1);
      const inches = Math.round((centimetres / 2.54) * 10) / 10;
      const feet = Math.floor(inches / 12);
      return `${number(feet)}${NO_BREAK_SPACE}ft${NO_BREAK_SPACE}${number(inches - feet * 12, 1)}${NO_BREAK_SPACE}in`;
    },
    plural: (n, one, other) => (pluralRules.select(n) === 'one' ? one : other).replace('#', number(n)),
    list: (items) => listFormat.format(items),
  };
};
