import type { SourceUnit } from './mapping';
import { readNumber } from './read-number';

const NUMBER = '(\\d+(?:[.,]\\d+)?)';
const FEET = /^(\d+)\s*(?:'|’|′|ft\.?|feet|foot)\s*(.*)$/i;
const STONES = /^(\d+)\s*(?:st\.?|stone|stones)\s*(.*)$/i;
const DASHED = /^(\d+)\s*-\s*(\d+(?:[.,]\d+)?)$/;
const INCHES = new RegExp(`^${NUMBER}\\s*(?:"|”|″|''|’’|in\\.?|inch|inches)?$`, 'i');
const POUNDS = new RegExp(`^${NUMBER}\\s*(?:lb|lbs|pounds?)?\\.?$`, 'i');

const SHAPES = {
  'ft-in': { large: FEET, small: INCHES, per: 12 },
  'st-lb': { large: STONES, small: POUNDS, per: 14 },
} as const;

/**
 * Feet and inches (`5'11"`, `5 ft 11`, `5-11`) in inches, or stones and pounds (`11 st 4 lb`, `11-4`) in pounds, as a
 * number's text. A bare number is not read: it could be either part. Undefined where the text is no such pair.
 */
export const readMixedUnits = (text: string, unit: SourceUnit, decimal: '.' | ','): string | undefined => {
  const shape = unit === 'ft-in' || unit === 'st-lb' ? SHAPES[unit] : undefined;
  if (shape === undefined) return undefined;
  const [, large, rest = ''] = shape.large.exec(text) ?? DASHED.exec(text) ?? [];
  if (large === undefined) return undefined;
  const small = rest.trim() === '' ? '0' : shape.small.exec(rest.trim())?.[1];
  const read = small === undefined ? undefined : readNumber(small, decimal);
  if (read === undefined || Number(read) >= shape.per) return undefined;
  const [whole = '0', part] = read.split('.');
  const total = String(Number(large) * shape.per + Number(whole));
  return part === undefined ? total : `${total}.${part}`;
};
