import type { Measure } from '../measures/measure';
import type { AnyMeasureId } from '../measures/measure-id';

const EXPORTED: ReadonlySet<AnyMeasureId> = new Set<AnyMeasureId>([
  'ffm_exported',
  'fm_exported',
  'smm_exported',
  'tbw_exported',
  'ecw_exported',
  'phase_angle_exported',
]);

/** Whether the device computed the value, so that its software matters. */
export const isExported = (measure: Measure): boolean => EXPORTED.has(measure.id);
