import type { IsoDate } from '../core/iso-date';
import type { Row } from '../engine/types';
import { reasonsOf } from './reasons';
import type { PairMasks } from './rules-in-force';
import type { LeftOut, StudyCluster } from './types/error-study';

const number = (row: Row, name: string): number => Number(row[name] ?? 0);
const text = (row: Row, name: string): string | null =>
  row[name] === null || row[name] === undefined ? null : String(row[name]);

const clusterKey = (row: Row): string =>
  `${String(row['client_key'])} ${String(row['visit_purpose'])} ${String(row['start_day'])}`;

/** What all visits of a cluster agree on; null where they differ or one does not say. */
const shared = (rows: readonly Row[], name: string): string | null => {
  const [first, ...others] = rows.map((row) => text(row, name));
  return others.every((other) => other === first) ? (first ?? null) : null;
};

const clusterOf = (key: string, rows: readonly Row[]): StudyCluster | undefined => {
  const [first, second] = rows;
  const last = rows.at(-1);
  if (first === undefined || second === undefined || last === undefined) return undefined;
  const values = rows.map((row) => number(row, 'value'));
  const mean = values.reduce((total, value) => total + value, 0) / values.length;
  const squares = values.reduce((total, value) => total + (value - mean) ** 2, 0);
  return {
    key,
    clientKey: number(first, 'client_key'),
    client: String(first['client_id']),
    from: String(first['visit_date']) as IsoDate,
    to: String(last['visit_date']) as IsoDate,
    visits: rows.length,
    mean,
    sd: Math.sqrt(squares / (rows.length - 1)),
    difference: number(second, 'value') - number(first, 'value'),
    reciprocalReadings: rows.reduce((total, row) => total + 1 / number(row, 'k'), 0) / rows.length,
    device: shared(rows, 'device'),
    operator: shared(rows, 'operator'),
    site: shared(rows, 'site'),
    program: text(first, 'program'),
    routine: first['visit_purpose'] !== 'precision',
  };
};

/** The study's visits of one value in their clusters, and what was left out of them. */
export const studyClusters = (
  rows: readonly Row[],
  masks: PairMasks,
): { readonly clusters: readonly StudyCluster[]; readonly leftOut: LeftOut } => {
  const kept = new Map<string, Row[]>();
  const reasons = new Map<LeftOut['reasons'][number]['reason'], number>();
  let notComparable = 0;
  const count = (reason: LeftOut['reasons'][number]['reason']): void =>
    void reasons.set(reason, (reasons.get(reason) ?? 0) + 1);
  for (const row of rows) {
    if (row['kept'] === 1) {
      const key = clusterKey(row);
      kept.set(key, [...(kept.get(key) ?? []), row]);
      continue;
    }
    notComparable += 1;
    const { broken, unknown, stopped } = row;
    const pair = { broken: Number(broken), unknown: Number(unknown), guards: Number(stopped) };
    for (const reason of reasonsOf(pair, masks)) count(reason);
    if (row['program_started'] === 1) count('program_started');
    if (row['other_path'] === 1) count('not_the_equations_path');
  }
  const clusters = [...kept].flatMap(([key, members]) => clusterOf(key, members) ?? []);
  const alone = [...kept.values()].filter((members) => members.length === 1).length;
  return {
    clusters,
    leftOut: {
      visits: rows.length,
      notComparable,
      alone,
      reasons: [...reasons].map(([reason, visits]) => ({ reason, visits })).sort((a, b) => b.visits - a.visits),
    },
  };
};
