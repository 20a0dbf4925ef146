import type { IsoDate } from '../core/iso-date';
import type { Engine, Row } from '../engine/types';
import type { Measure } from '../measures/measure';
import type { MeasureId } from '../measures/measure-id';
import { limitsOfAgreement } from '../stats/limits-of-agreement';
import type { CohortModel } from './model';
import type { DeviceConversion } from './settings-parts/device-settings';
import { crosscheckRowsQuery } from './sql/crosscheck-sql';
import type { CrossCheck, CrossCheckValue } from './types/cross-check';

/** From this many people on a cross-check can be accepted. */
export const PEOPLE_FOR_CROSS_CHECK = 30;

/** What a conversion changes. */
export const CONVERTED: readonly MeasureId[] = ['r', 'xc', 'weight'];

const valueOf = ({ id }: Measure, rows: readonly Row[]): CrossCheckValue => {
  const held = rows.filter((row) => row[`first_${id}`] !== null && row[`second_${id}`] !== null);
  const points = held.map((row) => ({
    clientKey: Number(row['client_key']),
    client: String(row['client_id']),
    date: String(row['visit_date']) as IsoDate,
    first: Number(row[`first_${id}`]),
    second: Number(row[`second_${id}`]),
  }));
  return { measure: id, points, agreement: limitsOfAgreement(points.map(({ first, second }) => second - first)) };
};

/** The cross-checks that rows of `crosscheckRowsQuery` hold, two devices each. */
export const crossChecksFrom = (
  rows: readonly Row[],
  measures: readonly Measure[],
  accepted: readonly DeviceConversion[],
): readonly CrossCheck[] => {
  const pairs = new Map<string, Row[]>();
  for (const row of rows) {
    const key = JSON.stringify([row['first_device'], row['second_device']]);
    pairs.set(key, [...(pairs.get(key) ?? []), row]);
  }
  return [...pairs.values()].flatMap((members) => {
    const [one] = members;
    if (one === undefined) return [];
    const [first, second] = [String(one['first_device']), String(one['second_device'])];
    const kept = members.filter((row) => row['kept'] === 1);
    return [
      {
        first,
        second,
        people: kept.length,
        leftOut: members.length - kept.length,
        enough: kept.length >= PEOPLE_FOR_CROSS_CHECK,
        values: measures.map((measure) => valueOf(measure, kept)),
        accepted: accepted.find((item) => item.first === first && item.second === second) ?? null,
      },
    ];
  });
};

/** The accepted conversions that the present data still bear out: at least 30 people on both devices. */
export const conversionsInForce = async (
  engine: Engine,
  model: CohortModel,
  accepted: readonly DeviceConversion[],
): Promise<readonly DeviceConversion[]> => {
  if (accepted.length === 0) return [];
  const measures = CONVERTED.map((id) => model.catalogue.measure(id));
  const rows = await engine.query(crosscheckRowsQuery(measures, model));
  return crossChecksFrom(rows, measures, accepted).flatMap((check) =>
    check.enough && check.accepted !== null ? [check.accepted] : [],
  );
};
