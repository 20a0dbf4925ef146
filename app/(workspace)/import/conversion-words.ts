import { DATE_ORDERS, SOURCE_UNITS } from '../../../lib/import/mapping';
import type { PlannedFile } from '../../../lib/import/plan';
import type { importScreen } from '../../../lib/core/messages/en/import';

type Words = ReturnType<typeof importScreen>;

/** One column's conversion in a sentence: another unit, another order of dates, another decimal mark. */
export const conversionWords = (conversion: PlannedFile['conversions'][number], words: Words): string => {
  const { column, from, to, cells } = conversion;
  const { units, orders } = words.mapping;
  const order = DATE_ORDERS.find((one) => one === from);
  if (order !== undefined) return words.files.orderRead({ column, cells, order: orders[order] });
  if (from === ',') return words.files.commaRead({ column, cells });
  const unit = (code: string): string => {
    const known = SOURCE_UNITS.find((one) => one === code);
    return known === undefined ? code : units[known];
  };
  return words.files.conversion({ column, cells, from: unit(from), to: unit(to) });
};
