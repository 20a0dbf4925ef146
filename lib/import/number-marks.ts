/**
 * What the marks of a number's text say: `whole` (no mark), `point` or `comma` (one decimal mark fits), `either`
 * (`1,234` is a thousand or one and a bit), `none` (no number). A single point before three digits counts as a decimal point.
 */
export type NumberMarks = 'whole' | 'point' | 'comma' | 'either' | 'none';

const WHOLE = /^[+-]?\d+$/;
const POINT = /^[+-]?(\d+\.\d*|\.\d+|\d+(?=e))(e[+-]?\d+)?$/i;
const COMMA = /^[+-]?(\d+,\d*|,\d+)(e[+-]?\d+)?$/i;
const EITHER = /^[+-]?[1-9]\d{0,2},\d{3}$/;
const COMMA_GROUPS = /^[+-]?[1-9]\d{0,2}(,\d{3})+(\.\d*)?$/;
const POINT_GROUPS = /^[+-]?[1-9]\d{0,2}(\.\d{3})+(,\d*)?$/;
const OTHER_GROUPS = /^[+-]?[1-9]\d{0,2}(?:([ '’])\d{3})(?:\1\d{3})*([.,]\d*)?$/;

/** The text without spaces or apostrophes between right groups of three, and with a plain minus sign. */
export const withoutGroups = (text: string): string => {
  const signed = text.replace('\u2212', '-');
  return OTHER_GROUPS.test(signed) ? signed.replace(/[ '’]/g, '') : signed;
};

/** Reads which marks a number's text has (see `NumberMarks`). */
export const numberMarks = (given: string): NumberMarks => {
  const text = withoutGroups(given);
  if (WHOLE.test(text)) return 'whole';
  if (POINT.test(text)) return 'point';
  if (EITHER.test(text)) return 'either';
  if (COMMA.test(text)) return 'comma';
  if (COMMA_GROUPS.test(text)) return 'point';
  return POINT_GROUPS.test(text) ? 'comma' : 'none';
};

/** Whether commas stand between right groups of three. */
export const hasCommaGroups = (text: string): boolean => COMMA_GROUPS.test(text);

/** Whether points stand between right groups of three. */
export const hasPointGroups = (text: string): boolean => POINT_GROUPS.test(text);
