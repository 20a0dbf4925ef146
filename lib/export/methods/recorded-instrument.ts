import type { MeasuredWay } from '../../cohort/types/methods';
import type { Recorded, RecordedInstrument } from './methods-input';

const counted = <T extends string | number>(
  ways: readonly MeasuredWay[],
  of: (way: MeasuredWay) => T | null,
): readonly Recorded<T>[] => {
  const visits = new Map<T, number>();
  for (const way of ways) {
    const value = of(way);
    if (value !== null) visits.set(value, (visits.get(value) ?? 0) + way.visits);
  }
  return [...visits].map(([value, n]) => ({ value, visits: n })).sort((a, b) => b.visits - a.visits);
};

/** The instrument's facts from the ways in which visits were measured; null where no visit holds a resistance. */
export const recordedInstrument = (ways: readonly MeasuredWay[]): RecordedInstrument | null =>
  ways.length === 0
    ? null
    : {
        visits: ways.reduce((total, way) => total + way.visits, 0),
        devices: counted(ways, (way) => way.device),
        electrodePaths: counted(ways, (way) => way.electrodePath),
        postures: counted(ways, (way) => way.posture),
        frequenciesKhz: counted(ways, (way) => way.frequencyKhz),
      };
