import type { Engine, Row } from '../engine/types';
import { conversionVariance } from '../stats/conversion-variance';
import { conversionsInForce } from './cross-check';
import { conversionTargetsOf, type CohortModel } from './model';
import type { DeviceConversion } from './settings-parts/device-settings';
import { conversionErrorQuery } from './sql/crosscheck-sql';
import type { PrecisionRow } from './types/precision-row';

/** Puts the shifts of the conversions in force into the tables that converted visits are made from. */
export const fillShifts = async (
  engine: Engine,
  model: CohortModel,
  accepted: readonly DeviceConversion[],
): Promise<void> => {
  const targets = conversionTargetsOf(accepted);
  const held = await conversionsInForce(engine, model, accepted);
  await engine.insert(
    'device_targets',
    ['target_no', 'device'],
    targets.map((device, target) => [target, device]),
  );
  await engine.insert(
    'device_shifts',
    ['target_no', 'device', 'r', 'xc', 'weight'],
    held.flatMap(({ first, second, r, xc, weight }) => [
      [targets.indexOf(first), second, -r, -xc, -weight],
      [targets.indexOf(second), first, r, xc, weight],
    ]),
  );
};

/** Puts what a conversion adds to the variance of a change, by value, target and device. */
export const fillConversionErrors = async (
  engine: Engine,
  model: CohortModel,
  precision: readonly PrecisionRow[],
): Promise<void> => {
  if (model.conversionTargets === 0) return;
  const rows = await engine.query(conversionErrorQuery(model));
  const repositioning = new Map(precision.map((row) => [row.measure, row.form === 'sd' ? (row.sw ?? 0) ** 2 : 0]));
  const at = (row: Row, name: string): number => Number(row[name] ?? 0);
  await engine.insert(
    'conversion_errors',
    ['measure', 'target_no', 'device', 'variance'],
    rows.flatMap((row) =>
      model.catalogue.all.flatMap(({ id }) => {
        const variance = conversionVariance({
          n: at(row, `n_${id}`),
          sumOfSquares: at(row, `ss_${id}`),
          repositioning: repositioning.get(id) ?? 0,
          reciprocalReadings: at(row, `ik_${id}`),
        });
        return variance === undefined ? [] : [[id, at(row, 'target_no'), String(row['device']), variance]];
      }),
    ),
  );
};
