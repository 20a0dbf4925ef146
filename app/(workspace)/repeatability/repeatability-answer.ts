import type { PrecisionRow } from '../../../lib/cohort/types/precision-row';
import type { Formatters } from '../../../lib/core/formatters';
import type { repeatability } from '../../../lib/core/messages/en/repeatability';
import type { Measure } from '../../../lib/measures/measure';

type Words = ReturnType<typeof repeatability>;

/** "How large must a change be here?" answered for one value, in the words of its tier. */
export const repeatabilityAnswer = (
  row: PrecisionRow | undefined,
  measure: Measure,
  words: Words,
  f: Formatters,
): string => {
  const value = measure.name;
  if (row?.atOwnValues === true) return words.atOwnValues({ value });
  if (row === undefined || row.tier === 6 || row.lsc === null) return words.noThreshold({ value });
  if (row.form === 'log') {
    const factor = (power: number): string => f.number(Math.exp(power), 3);
    return words.answerRelative({ value, up: factor(row.lsc), down: factor(-row.lsc) });
  }
  const quantity = (size: number): string => f.quantity(size, measure.unit, measure.decimals);
  const lsc = quantity(row.lsc);
  if (row.tier === 5) return words.lowerLimit({ value, lsc });
  return words.answer({
    value,
    lsc,
    low: row.lscInterval === null ? null : f.value(row.lscInterval[0], measure.unit, measure.decimals),
    high: row.lscInterval === null ? null : f.value(row.lscInterval[1], measure.unit, measure.decimals),
    source: row.tier === 3 ? 'entered' : row.tier === 4 ? 'published' : 'own',
  });
};
