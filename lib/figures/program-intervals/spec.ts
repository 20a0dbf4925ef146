import type { Ucum } from '../../core/units';
import type { FigureContext } from '../figure-context';
import { buildLinearAxis, type LinearAxis } from '../linear-axis';

export interface ProgramIntervalData {
  readonly id: string;
  readonly label: string;
  readonly shapeIndex: number;
  /** For example *44 of 62 seen*. */
  readonly nText: string;
  /** Missing where there are too few: a mean is never drawn without its interval. */
  readonly estimate?: { readonly mean: number; readonly low: number; readonly high: number };
  /** LSC of one person for this program's pairs. */
  readonly leastSignificantChange?: number;
}

export interface ProgramIntervalsData {
  readonly title: string;
  readonly unit: Ucum;
  readonly digits: number;
  readonly programs: readonly ProgramIntervalData[];
  readonly rowHeight?: number;
}

export interface ProgramInterval extends ProgramIntervalData {
  readonly key: string;
  readonly meanText: string;
  readonly lowText: string;
  readonly highText: string;
  /** ± LSC without unit; empty where there is no threshold. */
  readonly errorText: string;
  /** What a person hears when the row has the focus. */
  readonly focusLabel: string;
}

/** Mean change of each program with its interval on one axis over the error of one person. */
export interface ProgramIntervalsSpec {
  readonly kind: 'program-intervals';
  readonly width: number;
  readonly title: string;
  readonly rowHeight: number;
  readonly axis: LinearAxis;
  readonly programs: readonly ProgramInterval[];
  /** Stands where a program has no interval. */
  readonly noEstimate: string;
  readonly message?: string;
}

const isUsable = ({ mean, low, high }: { mean: number; low: number; high: number }): boolean =>
  [mean, low, high].every(Number.isFinite);

/** One axis for all programs that holds every interval, every band and zero; the order given is kept. */
export const buildProgramIntervals = (data: ProgramIntervalsData, context: FigureContext): ProgramIntervalsSpec => {
  const { formatters, words } = context;
  const programs = data.programs.map((program): ProgramInterval => {
    const { estimate, leastSignificantChange, ...rest } = program;
    const drawn = estimate !== undefined && isUsable(estimate) ? estimate : undefined;
    const error =
      leastSignificantChange !== undefined && Number.isFinite(leastSignificantChange) && leastSignificantChange > 0
        ? leastSignificantChange
        : undefined;
    const write = (value: number | undefined): string =>
      value === undefined ? '' : formatters.change(value, data.unit, data.digits);
    const texts = { mean: write(drawn?.mean), low: write(drawn?.low), high: write(drawn?.high) };
    const said = { label: program.label, n: program.nText };
    return {
      ...rest,
      key: program.id,
      meanText: texts.mean,
      lowText: texts.low,
      highText: texts.high,
      errorText: error === undefined ? '' : formatters.value(error, data.unit, data.digits),
      focusLabel: drawn === undefined ? words.programWithout(said) : words.programInterval({ ...said, ...texts }),
      ...(drawn === undefined ? {} : { estimate: drawn }),
      ...(error === undefined ? {} : { leastSignificantChange: error }),
    };
  });
  const held = programs.flatMap(({ estimate, leastSignificantChange: error }) => [
    ...(estimate === undefined ? [] : [estimate.low, estimate.mean, estimate.high]),
    ...(error === undefined ? [] : [-error, error]),
  ]);
  const axis = buildLinearAxis({
    title: data.title,
    unit: data.unit,
    values: held.length === 0 ? [] : [0, ...held],
    fallback: [-1, 1],
    formatters,
    signed: true,
  });
  return {
    kind: 'program-intervals',
    width: context.width ?? 760,
    title: data.title,
    rowHeight: data.rowHeight ?? 46,
    axis,
    programs,
    noEstimate: words.tooFew,
    ...(programs.length === 0 ? { message: words.nothingToDraw } : {}),
  };
};

/** Keys of the rows from top to bottom. */
export const programIntervalsPointKeys = (spec: ProgramIntervalsSpec): string[] =>
  spec.programs.map((program) => program.key);
