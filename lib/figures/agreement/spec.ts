import type { Ucum } from '../../core/units';
import type { FigureContext } from '../figure-context';
import { buildLinearAxis, type LinearAxis } from '../linear-axis';

export interface AgreementPointData {
  readonly key: string;
  /** Who and when, for the ear. */
  readonly label: string;
  readonly first: number;
  readonly second: number;
}

export interface AgreementData {
  readonly unit: Ucum;
  readonly digits: number;
  /** Axis titles without unit. */
  readonly meanTitle: string;
  readonly differenceTitle: string;
  readonly points: readonly AgreementPointData[];
  /** Missing for fewer than three people: points alone are drawn. */
  readonly agreement?: { readonly bias: number; readonly limits: readonly [number, number] };
  /** What the lines are called, where they are not bias and limits of agreement. */
  readonly lineNames?: Readonly<Record<AgreementLine['id'], string>>;
}

export interface AgreementPoint {
  readonly key: string;
  readonly label: string;
  readonly x: number;
  readonly y: number;
  readonly meanText: string;
  readonly differenceText: string;
  /** What a person hears when the point has the focus. */
  readonly focusLabel: string;
}

export interface AgreementLine {
  readonly id: 'upper' | 'bias' | 'lower';
  readonly value: number;
  readonly text: string;
}

/** Difference of two ways to get a value against their mean, with bias and limits of agreement (Bland and Altman). */
export interface AgreementSpec {
  readonly kind: 'agreement';
  readonly width: number;
  readonly height: number;
  readonly x: LinearAxis;
  readonly y: LinearAxis;
  readonly points: readonly AgreementPoint[];
  readonly lines: readonly AgreementLine[];
  readonly message?: string;
}

/** First minus second, upwards; their mean, to the right. Values that are not finite are left out. */
export const buildAgreement = (data: AgreementData, context: FigureContext): AgreementSpec => {
  const { formatters, words } = context;
  const { unit, digits, agreement } = data;
  const points = data.points
    .filter(({ first, second }) => Number.isFinite(first) && Number.isFinite(second))
    .map(({ key, label, first, second }): AgreementPoint => {
      const x = (first + second) / 2;
      const y = first - second;
      const meanText = formatters.value(x, unit, digits);
      const differenceText = formatters.change(y, unit, digits);
      return {
        key,
        label,
        x,
        y,
        meanText,
        differenceText,
        focusLabel: words.agreementPoint({ label, mean: meanText, difference: differenceText }),
      };
    });
  const line = (id: AgreementLine['id'], value: number): AgreementLine => ({
    id,
    value,
    text: words.agreementLine({
      name: data.lineNames?.[id] ?? words.agreementNames[id],
      value: formatters.change(value, unit, digits),
    }),
  });
  const lines =
    agreement === undefined
      ? []
      : [line('upper', agreement.limits[1]), line('bias', agreement.bias), line('lower', agreement.limits[0])];
  return {
    kind: 'agreement',
    width: context.width ?? 760,
    height: context.height ?? 380,
    x: buildLinearAxis({
      title: data.meanTitle,
      unit,
      values: points.map(({ x }) => x),
      fallback: [0, 1],
      formatters,
    }),
    y: buildLinearAxis({
      title: data.differenceTitle,
      unit,
      values: points.length === 0 ? [] : [0, ...points.map(({ y }) => y), ...lines.map(({ value }) => value)],
      fallback: [-1, 1],
      formatters,
      signed: true,
      padding: 0.08,
    }),
    points,
    lines,
    ...(points.length === 0 ? { message: words.nothingToDraw } : {}),
  };
};

/** Keys of the points from left to right. */
export const agreementPointKeys = (spec: AgreementSpec): string[] =>
  [...spec.points].sort((a, b) => a.x - b.x || a.y - b.y).map(({ key }) => key);
