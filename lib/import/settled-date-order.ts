import type { ColumnProfile, DateOrder } from './mapping';

const PATTERN =
  /(d{1,2}|t{1,2}|m{1,2}|y{4}|y{2}|j{4}|a{4})[^\p{L}\d]?(d{1,2}|t{1,2}|m{1,2})[^\p{L}\d]?(d{1,2}|t{1,2}|y{2,4}|j{2,4}|a{2,4})(?!\p{L})/iu;

/** The order of dates that a heading writes out (`Date (dd/mm/yyyy)`). */
const orderInHeader = (header: string): DateOrder | undefined => {
  const [, first = '', middle = ''] = PATTERN.exec(header.replace(/^[^([]*[([]/, '')) ?? [];
  if (/^[dt]/i.test(first) && /^m/i.test(middle)) return 'dmy';
  return /^m/i.test(first) && /^[dt]/i.test(middle) ? 'mdy' : undefined;
};

/** The orders that read some of a column's dates, those that read most first. */
export const possibleOrders = ({ dates }: ColumnProfile): readonly DateOrder[] => {
  const orders: readonly (readonly [DateOrder, number])[] = [
    ['dmy', dates.dmy > dates.ymd ? dates.dmy : 0],
    ['mdy', dates.mdy > dates.ymd ? dates.mdy : 0],
    ['ymd', dates.ymd],
    ['serial-1900', dates.serial],
    ['serial-1904', dates.serial],
  ];
  return orders
    .filter(([, count]) => count > 0)
    .sort((a, b) => b[1] - a[1])
    .map(([order]) => order);
};

/**
 * The order in which a column's dates are written, where its own cells (or its heading) leave no doubt (no
 * other order reads any of them, or it alone reads them all); `ymd` where no
 * order reads any. Undefined: a person is asked. Years of two digits are read in no order.
 */
export const settledDateOrder = (profile: ColumnProfile): DateOrder | undefined => {
  const { filled, dates, name } = profile;
  const orders = possibleOrders(profile);
  if (orders.length === 0) return 'ymd';
  const [first] = orders;
  if (orders.length === 1 && first !== undefined) return first;
  const all = orders.filter((order) => order in dates && dates[order as 'dmy' | 'mdy' | 'ymd'] === filled);
  const [only] = all;
  if (dates.ymd === 0 && dates.serial === 0 && all.length === 1 && only !== undefined) return only;
  const written = orderInHeader(name);
  return written !== undefined && all.includes(written) ? written : undefined;
};
