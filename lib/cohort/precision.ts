import type { Row } from '../engine/types';
import type { Measure } from '../measures/measure';
import { changedPer100 } from '../stats/changed-per-100';
import { precisionError } from '../stats/precision-error';
import { precisionRange } from '../stats/precision-range';
import { precisionTier, type PrecisionTier } from '../stats/precision-tier';
import { thresholdFactor, type ThresholdConvention } from '../stats/threshold-factor';
import { varianceComponents, type PrecisionSums, type VarianceComponents } from '../stats/variance-components';
import { varianceNotBelowRepositioning } from '../stats/variance-not-below-repositioning';
import { PUBLISHED_ERROR, publishedFor, publishedGradient } from './published-error';
import type { Settings } from './settings';
import type { Level } from './types/filter';
import type { NoThreshold, PrecisionRow } from './types/precision-row';

/** The error study's sums, as the engine gave them. */
export interface PrecisionInput {
  readonly within: Row;
  readonly between: Row;
  /** Decimals recorded, by column. */
  readonly decimals: ReadonlyMap<string, number>;
  /** Sums on logarithms of the values whose log form a person accepted. */
  readonly logs: ReadonlyMap<string, Row>;
}

const numberAt = (row: Row, name: string): number => Number(row[name] ?? 0);

/** δ²/12 with δ the recorded resolution: readings that all agree do not mean no error. */
const floorVariance = (measure: Measure, decimals: ReadonlyMap<string, number>): number | undefined => {
  const digits = measure.recordedAs === undefined ? undefined : decimals.get(measure.recordedAs);
  return digits === undefined ? undefined : 10 ** (-2 * digits) / 12;
};

const sumsOf = (measure: Measure, input: PrecisionInput): PrecisionSums => {
  const { id } = measure;
  const floor = floorVariance(measure, input.decimals);
  return {
    sumWithin: numberAt(input.within, `ss_${id}`),
    dfWithin: Math.round(numberAt(input.within, `df_${id}`)),
    sumBetween: numberAt(input.between, `ss_${id}`),
    dfBetween: numberAt(input.between, `df_${id}`),
    sumReciprocalReadings: numberAt(input.between, `ik_${id}`),
    ...(floor === undefined ? {} : { floorVariance: floor }),
  };
};

/** The two parts of V(k₁,k₂) that stand in SQL: what replicates cannot and what they can shrink. */
const varianceParts = (
  tier: PrecisionTier['tier'],
  components: VarianceComponents | undefined,
  entered: number | undefined,
): readonly [number, number] | null => {
  if (tier === 6) return null;
  if (tier === 3) return [varianceNotBelowRepositioning(entered ?? 0, components?.repositioning), 0];
  if (tier === 4) return [varianceNotBelowRepositioning(PUBLISHED_ERROR.sd, components?.repositioning), 0];
  if (components === undefined) return null;
  const { between, repositioning } = components;
  if (between === undefined || tier === 5) return [2 * repositioning, 0];
  if (between.replicatesEarnNothing) return [2 * Math.max(between.meanSquare, repositioning), 0];
  return [2 * between.dayToDay, repositioning];
};

const WHY: Readonly<Record<Settings['errorSource']['kind'], NoThreshold>> = {
  own: 'not-measured',
  entered: 'not-measured',
  published: 'not-published',
  none: 'not-chosen',
};

/** The sums of one value on logarithms, as the study's; undefined where it is not judged by them. */
const logInput = (id: Measure['id'], input: PrecisionInput): PrecisionInput | undefined => {
  const row = input.logs.get(id);
  if (row === undefined || !(numberAt(row, 'lowest') > 0)) return undefined;
  const part = (kind: 'within' | 'between'): Row => ({
    [`ss_${id}`]: row[`${kind}_ss`] ?? null,
    [`df_${id}`]: row[`${kind}_df`] ?? null,
    [`ik_${id}`]: row[`${kind}_ik`] ?? null,
    [`people_${id}`]: row[`${kind}_people`] ?? null,
  });
  return { within: part('within'), between: part('between'), decimals: new Map(), logs: new Map() };
};

const clientsOf = (tier: PrecisionTier['tier'], id: Measure['id'], input: PrecisionInput): number => {
  if (tier === 4) return PUBLISHED_ERROR.clients;
  return numberAt(tier === 5 ? input.within : input.between, `people_${id}`);
};

const conventionOf = (settings: Settings, provisionalOfOneGroup: boolean): ThresholdConvention => {
  if (settings.errorStudy.cautious) return 'cautious';
  return settings.errorSource.alwaysT && !provisionalOfOneGroup ? 'always-t' : 'conventional';
};

const formRow = (
  measure: Measure,
  input: PrecisionInput,
  settings: Settings,
  level: Level,
  form: PrecisionRow['form'],
): PrecisionRow => {
  const { id } = measure;
  const sums = sumsOf(measure, input);
  const components = varianceComponents(sums);
  const entered =
    settings.errorSource.kind === 'entered' && form === 'sd'
      ? settings.errorSource.values.find((value) => value.measure === id)
      : undefined;
  const chosen = precisionTier({
    betweenDf: sums.dfBetween,
    betweenClients: numberAt(input.between, `people_${id}`),
    withinDf: sums.dfWithin,
    ...(entered === undefined ? {} : { entered: { df: entered.df } }),
    ...(settings.errorSource.kind === 'published' && form === 'sd' && publishedFor(measure)
      ? { published: { df: PUBLISHED_ERROR.df } }
      : {}),
    ownStudyOnly: settings.errorSource.kind === 'none',
  });
  const parts = varianceParts(chosen.tier, components, entered?.betweenDaySd);
  const base = {
    measure: id,
    tier: chosen.tier,
    clients: clientsOf(chosen.tier, id, input),
    sw: components === undefined || sums.dfWithin === 0 ? null : Math.sqrt(components.repositioning),
    dfWithin: sums.dfWithin,
    sb: components?.between === undefined ? null : Math.sqrt(components.between.dayToDay),
    m: components?.between?.meanSquare ?? null,
    dfBetween: sums.dfBetween,
    h: components?.between?.repositioningShare ?? null,
    form,
    ...(chosen.tier === 3 || chosen.tier === 4 ? { outsideDf: chosen.df } : {}),
  };
  if (chosen.tier === 6 || parts === null) {
    const nothing = { factor: null, pe: null, peInterval: null, lsc: null, lscInterval: null, changedPer100: null };
    return {
      ...base,
      ...nothing,
      provisional: false,
      twoBetween: null,
      within: null,
      why: WHY[settings.errorSource.kind],
    };
  }
  const [twoBetween, within] = parts;
  const variance = twoBetween + 2 * within;
  const provisionalOfOneGroup = chosen.tier === 1 && chosen.provisional;
  const factor = thresholdFactor(level / 100, chosen.df, conventionOf(settings, provisionalOfOneGroup));
  if (chosen.tier === 4 && publishedGradient(measure) !== undefined) {
    const unsaid = { pe: null, peInterval: null, lsc: null, lscInterval: null };
    const published = { factor, twoBetween: 2 * PUBLISHED_ERROR.sd ** 2, within: 0, atOwnValues: true as const };
    return { ...base, ...unsaid, ...published, changedPer100: changedPer100(factor, chosen.df), provisional: true };
  }
  const pe = Math.sqrt(variance / 2);
  const lsc = factor * Math.sqrt(variance);
  return {
    ...base,
    factor,
    pe,
    peInterval: precisionRange(pe, chosen.df, 0.95),
    lsc,
    lscInterval: precisionRange(lsc, chosen.df, 0.95),
    changedPer100: changedPer100(factor, chosen.df),
    provisional: chosen.provisional,
    twoBetween,
    within,
  };
};

/** A value that a person judges by logarithms is, as long as its own study holds a threshold on them. */
const precisionRow = (measure: Measure, input: PrecisionInput, settings: Settings, level: Level): PrecisionRow => {
  const logs = logInput(measure.id, input);
  const relative = logs === undefined ? undefined : formRow(measure, logs, settings, level, 'log');
  return relative === undefined || relative.tier === 6 ? formRow(measure, input, settings, level, 'sd') : relative;
};

/** SD of ln of one reading by the two components of the study's sums on logarithms; null where there is none. */
export const sdOfLogs = (measure: Measure, row: Row | undefined): number | null => {
  const logs =
    row === undefined
      ? undefined
      : logInput(measure.id, { within: {}, between: {}, decimals: new Map(), logs: new Map([[measure.id, row]]) });
  if (logs === undefined) return null;
  const components = varianceComponents(sumsOf(measure, logs));
  return components?.between === undefined ? null : precisionError(components);
};

/** The error of every value in force, the supporting ones included, at one level. */
export const precisionRows = (
  measures: readonly Measure[],
  input: PrecisionInput,
  settings: Settings,
  level: Level,
): readonly PrecisionRow[] => measures.map((measure) => precisionRow(measure, input, settings, level));
