import { COLUMN_BY_NAME } from './columns';
import type { Mapping } from './mapping';

/** A column whose cells are all read by one rule: another unit, another decimal mark, another order of dates. */
export interface Conversion {
  readonly column: string;
  readonly from: string;
  readonly to: string;
}

/** The conversions that a mapping asks for, once per canonical column. */
export const mappingConversions = (mapping: Mapping): readonly Conversion[] => {
  const all = mapping.columns.flatMap(({ to: column, unit, decimal, dateOrder }): readonly Conversion[] => {
    const { unit: own = '', type } = COLUMN_BY_NAME.get(column) ?? {};
    return [
      ...(unit === undefined || unit === own || type !== 'number' ? [] : [{ column, from: unit, to: own }]),
      ...(decimal === ',' && type === 'number' ? [{ column, from: ',', to: '.' }] : []),
      ...(dateOrder === undefined || dateOrder === 'ymd' || type !== 'date'
        ? []
        : [{ column, from: dateOrder, to: 'ymd' }]),
    ];
  });
  const keys = all.map(({ column, from }) => `${column} ${from}`);
  return all.filter((_, index) => keys.indexOf(keys[index] ?? '') === index);
};
