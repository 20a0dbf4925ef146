import type { VarianceComponents } from './variance-components';
import { varianceOfChange } from './variance-of-change';

/**
 * Precision error PE of a visit value of k readings, √(s_b² + s_w²/k), in units of the value; for one reading
 * √(s_b² + s_w²). Half the variance of a change between two such visits, so the same rules hold for both.
 */
export const precisionError = (components: VarianceComponents, readings = 1): number =>
  Math.sqrt(varianceOfChange(components, readings, readings) / 2);
