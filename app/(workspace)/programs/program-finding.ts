import type { ProgramRow } from '../../../lib/cohort/types/program-row';
import type { Formatters } from '../../../lib/core/formatters';
import type { programs } from '../../../lib/core/messages/en/programs';
import type { Measure } from '../../../lib/measures/measure';
import { programDirection, type Direction } from './program-direction';

type Words = ReturnType<typeof programs>;

/** The sentence over the figure: the direction of each program's mean among the people compared, programs by name. */
export const programFinding = (rows: readonly ProgramRow[], measure: Measure, words: Words, f: Formatters): string => {
  const withPairs = rows.filter((row) => row.nPairs > 0);
  if (withPairs.length === 0) return words.none;
  const placed = withPairs.flatMap((row) => {
    const direction = programDirection(row);
    return direction === undefined ? [] : [{ row, direction }];
  });
  const [only] = placed;
  if (only === undefined) return words.nothingComparable({ value: measure.name });
  if (placed.length === 1 && only.direction !== 'unclear') {
    const mean = only.row.mean ?? 0;
    return words.oneFinding({
      program: only.row.program,
      value: measure.name,
      mean,
      size: f.quantity(Math.abs(mean), measure.unit, measure.decimals),
      n: only.row.nComparable,
    });
  }
  const named = (direction: Direction): string[] =>
    placed.filter((one) => one.direction === direction).map((one) => one.row.program);
  return words.finding({
    value: measure.name,
    rose: named('rose'),
    fell: named('fell'),
    unclear: named('unclear'),
  });
};
