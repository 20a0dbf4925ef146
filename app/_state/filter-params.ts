import { parseAsInteger, parseAsNumberLiteral, parseAsString, parseAsStringLiteral } from 'nuqs';
import { MEASURE_IDS } from '../../lib/measures/measure-id';

export const LEVELS = [80, 90, 95] as const;
export const PAIR_SETTINGS = ['strict', 'caution', 'all'] as const;

/** The filter's names in the address. What does not parse is the default. */
export const filterParams = {
  value: parseAsStringLiteral(MEASURE_IDS),
  level: parseAsNumberLiteral(LEVELS),
  pairs: parseAsStringLiteral(PAIR_SETTINGS),
  program: parseAsString,
  site: parseAsString,
  sex: parseAsStringLiteral(['F', 'M'] as const),
  from: parseAsInteger,
  to: parseAsInteger,
};

export const FILTER_NAMES = Object.keys(filterParams);
