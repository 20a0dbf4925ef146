import { DATE_ORDERS, SOURCE_UNITS } from '../../../lib/import/mapping';
import type { PlannedFile } from '../../../lib/import/plan';
import type { importScreen } from '../../../lib/core/messages/en/import';

type Words = ReturnType<typeof importScreen>;
type Conversions = PlannedFile['conversions'];

const sentence = (from: string, to: string, columns: readonly string[], words: Words): string => {
  const { units, orders } = words.mapping;
  if (to === '') return words.files.readAsUnknown({ word: from, columns });
  const order = DATE_ORDERS.find((one) => one === from);
  if (order !== undefined) return words.files.orderRead({ order: orders[order], columns });
  if (from === ',') return words.files.commaRead({ columns });
  const unit = (code: string): string => {
    const known = SOURCE_UNITS.find((one) => one === code);
    return known === undefined ? code : units[known];
  };
  return words.files.converted({ from: unit(from), to: unit(to), columns });
};

/** A file's conversions, a sentence for each kind: another unit, another order of dates, another decimal mark. */
export const conversionWords = (conversions: Conversions, words: Words): readonly string[] => {
  const kinds = new Map<string, Conversions>();
  for (const one of conversions) {
    const kind = `${one.from}\u0000${one.to}`;
    kinds.set(kind, [...(kinds.get(kind) ?? []), one]);
  }
  return [...kinds.values()].map((alike) => {
    const columns = alike.map(({ column, cells }) =>
      words.files.withCells({ column: words.mapping.name({ column }), cells }),
    );
    return sentence(alike[0]?.from ?? '', alike[0]?.to ?? '', columns, words);
  });
};
