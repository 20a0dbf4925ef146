import type { Row } from '../engine/types';
import { precisionRange } from '../stats/precision-range';
import { CONVENTIONAL_DF } from '../stats/threshold-factor';
import type { QuarterError, StudyCluster, StudyGroup, StudyGrouping } from './types/error-study';

const GROUPINGS: readonly StudyGrouping[] = ['device', 'operator', 'site', 'program'];

interface Pooled {
  readonly df: number;
  readonly people: number;
  readonly pe: number;
}

/** Between-day PE of one reading of some clusters, √(max(0, M − h·s_w²) + s_w²), with a repositioning variance s_w². */
const pooled = (clusters: readonly StudyCluster[], repositioning: number): Pooled => {
  const df = clusters.reduce((total, { visits }) => total + visits - 1, 0);
  const squares = clusters.reduce((total, { visits, sd }) => total + (visits - 1) * sd * sd, 0);
  const reciprocals = clusters.reduce((total, one) => total + (one.visits - 1) * one.reciprocalReadings, 0);
  const dayToDay = Math.max(0, squares / df - (reciprocals / df) * repositioning);
  return {
    df,
    people: new Set(clusters.map(({ clientKey }) => clientKey)).size,
    pe: Math.sqrt(dayToDay + repositioning),
  };
};

const by = <Key>(
  clusters: readonly StudyCluster[],
  keyOf: (cluster: StudyCluster) => Key,
): ReadonlyMap<Key, readonly StudyCluster[]> => {
  const groups = new Map<Key, StudyCluster[]>();
  for (const cluster of clusters) {
    const key = keyOf(cluster);
    groups.set(key, [...(groups.get(key) ?? []), cluster]);
  }
  return groups;
};

const orderOf = (name: string | null): string => name ?? '\uFFFF';

/** Repositioning variance of a group's own replicates where they have 30 degrees of freedom, else everyone's. */
const repositioningOf = (
  replicates: readonly Row[],
  by: StudyGrouping,
  name: string | null,
  everyone: number,
): number => {
  const own = replicates.find((row) => row['grouped_by'] === by && (row['group_name'] ?? null) === name);
  const df = Number(own?.['df'] ?? 0);
  return name !== null && df >= CONVENTIONAL_DF ? Number(own?.['ss']) / df : everyone;
};

/**
 * The error of every group with its own degrees of freedom: between days from clusters, repositioning from the sums of
 * replicates.
 *
 * @param repositioning s_w² of all people: a group of clusters seldom holds enough replicates of its own.
 */
export const studyGroups = (
  clusters: readonly StudyCluster[],
  replicates: readonly Row[],
  repositioning: number,
): readonly StudyGroup[] => {
  const between = GROUPINGS.flatMap((grouping) =>
    [...by(clusters, (cluster) => cluster[grouping])].map(([name, members]): StudyGroup => {
      const { df, people, pe } = pooled(members, repositioningOf(replicates, grouping, name, repositioning));
      return {
        by: grouping,
        name,
        kind: 'between',
        people,
        df,
        pe,
        interval: precisionRange(pe, df),
        enough: df >= CONVENTIONAL_DF,
      };
    }),
  );
  const again = replicates.map((row): StudyGroup => {
    const df = Math.round(Number(row['df']));
    const pe = Math.sqrt(Number(row['ss']) / df);
    const name = row['group_name'];
    return {
      by: String(row['grouped_by']) as StudyGrouping,
      name: name === null || name === undefined ? null : String(name),
      kind: 'repositioning',
      people: Number(row['people']),
      df,
      pe,
      interval: precisionRange(pe, df),
      enough: df >= CONVENTIONAL_DF,
    };
  });
  return [...between, ...again].sort(
    (a, b) =>
      GROUPINGS.indexOf(a.by) - GROUPINGS.indexOf(b.by) ||
      a.kind.localeCompare(b.kind) ||
      (orderOf(a.name) < orderOf(b.name) ? -1 : 1),
  );
};

const quarterOf = (date: string): string => `${date.slice(0, 4)}-Q${String(Math.ceil(Number(date.slice(5, 7)) / 3))}`;

/** Between-day error over time, by the quarter in which a cluster began. */
export const studyQuarters = (clusters: readonly StudyCluster[], repositioning: number): readonly QuarterError[] =>
  [...by(clusters, ({ from }) => quarterOf(from))]
    .map(([quarter, members]) => {
      const found = pooled(members, repositioning);
      return { quarter, ...found, interval: precisionRange(found.pe, found.df) };
    })
    .sort((a, b) => (a.quarter < b.quarter ? -1 : 1));
