import type { AnyMeasureId, MeasureId } from '../measures/measure-id';

const EXPORTED: Readonly<Partial<Record<MeasureId, MeasureId>>> = {
  ffm: 'ffm_exported',
  fm: 'fm_exported',
  smm: 'smm_exported',
  phase_angle: 'phase_angle_exported',
};

/** The chosen value; where a client has no change of it, the same value as the device exported it. */
export const judgedMeasureOf = (
  latestChanges: readonly { readonly measure: AnyMeasureId }[],
  chosen: MeasureId,
): MeasureId => {
  const exported = EXPORTED[chosen];
  const has = (id: MeasureId): boolean => latestChanges.some(({ measure }) => measure === id);
  return exported !== undefined && !has(chosen) && has(exported) ? exported : chosen;
};
