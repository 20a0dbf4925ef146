import { cohortModel } from '../cohort/model';
import type { Settings } from '../cohort/settings';
import { err, ok, type Result } from '../core/result';
import type { MeasureId } from '../measures/measure-id';

/** The values that were asked for by id, all that these settings follow where none was; the error names those there are. */
export const measuresFrom = (
  ids: readonly string[] | undefined,
  settings: Settings,
): Result<readonly MeasureId[], string> => {
  const followed = cohortModel(settings).catalogue.measures.map(({ id }) => id as MeasureId);
  if (ids === undefined) return ok(followed);
  const known = new Set<string>(followed);
  const unknown = ids.find((id) => !known.has(id));
  if (unknown !== undefined) return err(`there is no value “${unknown}”; there are ${followed.join(', ')}`);
  return ok(followed.filter((id) => ids.includes(id)));
};
