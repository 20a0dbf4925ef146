import { hasCommaGroups, hasPointGroups, withoutGroups } from './number-marks';

/** A number as the visit export writes it: a decimal point, no thousands mark. */
export const PLAIN_NUMBER = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;

const readPoint = (text: string): string | undefined => {
  const bare = hasCommaGroups(text) ? text.replaceAll(',', '') : text;
  return PLAIN_NUMBER.test(bare) ? bare : undefined;
};

const readComma = (text: string): string | undefined => {
  const bare = (hasPointGroups(text) ? text.replaceAll('.', '') : text).replace(',', '.');
  return PLAIN_NUMBER.test(bare) ? bare : undefined;
};

/**
 * A number's text with a decimal point and no thousands mark; its decimals stay as they were written. Thousands marks
 * (the other of point and comma, a space, an apostrophe) are taken between right groups of three alone. In a column
 * with a decimal comma a point that cannot be a thousands mark is the decimal mark it looks like. Undefined: no number.
 */
export const readNumber = (given: string, decimal: '.' | ','): string | undefined => {
  const text = withoutGroups(given);
  return decimal === '.' ? readPoint(text) : readComma(text);
};
