'use client';

import { useCallback } from 'react';
import { MEASURE_FACTS, type MeasureFacts } from '../../lib/measures/measure-facts';
import type { AnyMeasureId } from '../../lib/measures/measure-id';
import { useFormatters } from './language-provider';
import { useValueNames } from './use-value-names';

/** How one value is named and written. */
export interface ValueWords {
  readonly measure: MeasureFacts & { readonly id: AnyMeasureId };
  /** In the middle of a sentence. */
  readonly name: string;
  /** At the start of a sentence. */
  readonly title: string;
  /** A size without sign, with its unit. */
  readonly amount: (value: number) => string;
  /** Two sizes, with one more decimal where they would read the same and are not. */
  readonly amounts: (first: number, second: number) => readonly [string, string];
  /** A change with sign and unit. */
  readonly change: (value: number) => string;
}

/** The words of any value, with this person's units. */
export const useValueWords = (): ((id: AnyMeasureId) => ValueWords) => {
  const formatters = useFormatters();
  const nameOf = useValueNames();
  return useCallback(
    (id) => {
      const measure = { id, ...MEASURE_FACTS[id] };
      const name = nameOf(id);
      const unit = formatters.unit(measure.unit);
      const withUnit = (text: string): string =>
        unit === '' ? text : unit === '°' ? `${text}°` : `${text}\u00A0${unit}`;
      const sized = (value: number, digits: number): string =>
        formatters.quantity(Math.abs(value), measure.unit, digits);
      return {
        measure,
        name,
        title: name.charAt(0).toLocaleUpperCase(formatters.locale) + name.slice(1),
        amount: (value) => sized(value, measure.decimals),
        amounts: (first, second) => {
          const same = sized(first, measure.decimals) === sized(second, measure.decimals);
          const digits = measure.decimals + (same && first !== second ? 1 : 0);
          return [sized(first, digits), sized(second, digits)];
        },
        change: (value) => withUnit(formatters.change(value, measure.unit, measure.decimals)),
      };
    },
    [nameOf, formatters],
  );
};
