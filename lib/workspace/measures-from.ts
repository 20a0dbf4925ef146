import { err, ok, type Result } from '../core/result';
import { MEASURE_IDS, type MeasureId } from '../measures/measure-id';

/** The values that were asked for by id, all where none was; the error names the ids that exist. */
export const measuresFrom = (ids: readonly string[] | undefined): Result<readonly MeasureId[], string> => {
  if (ids === undefined) return ok(MEASURE_IDS);
  const known = new Set<string>(MEASURE_IDS);
  const unknown = ids.find((id) => !known.has(id));
  if (unknown !== undefined) return err(`there is no value “${unknown}”; there are ${MEASURE_IDS.join(', ')}`);
  return ok(MEASURE_IDS.filter((id) => ids.includes(id)));
};
