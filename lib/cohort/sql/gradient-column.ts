import type { AnyMeasureId } from '../../measures/measure-id';

/** The column with a value's derivative by the impedance at a reading's (visit's) own values. */
export const gradientColumn = (id: AnyMeasureId): string => `${id}_by_impedance`;
