import type { UnitFactor } from './units';

const DECIMAL = /^([+-]?)(\d*)\.?(\d*)$/;

const scaled = (text: string): { readonly digits: bigint; readonly places: number } | undefined => {
  const [, sign = '', whole = '', part = ''] = DECIMAL.exec(text) ?? [];
  if (whole + part === '') return undefined;
  const digits = BigInt(whole + part);
  return { digits: sign === '-' ? -digits : digits, places: part.length };
};

const exactProduct = (left: string, right: string): number => {
  const [a, b] = [scaled(left), scaled(right)];
  if (a === undefined || b === undefined) return Number(left) * Number(right);
  return Number(`${String(a.digits * b.digits)}e-${String(a.places + b.places)}`);
};

/**
 * A number's text in another unit: the product is taken in decimals, so that 154 lb is `69.85322498` kg and no
 * neighbour of it; printed as the shortest decimal of the nearest double.
 */
export const convertNumber = (text: string, factor: UnitFactor): string => {
  if (factor.times === '1' && factor.per === 1) return text;
  const product = exactProduct(text, factor.times);
  return String(factor.per === 1 ? product : product / factor.per);
};
