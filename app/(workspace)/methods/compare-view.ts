import type { EquationComparison, EquationDifference } from '../../../lib/cohort/types/methods';
import type { Formatters } from '../../../lib/core/formatters';
import type { Messages } from '../../../lib/core/messages/en';
import type { DifferenceSpreadData } from '../../../lib/figures/difference-spread/spec';
import type { Equation } from '../../../lib/measures/equation';
import { commonUnit } from '../../../lib/measures/in-common-unit';
import type { MethodChoice } from '../../../lib/workspace/method-choices';
import type { DataColumn } from '../../_ui/data-column';

type Words = Messages['methods'];

/** Which equation the others are held against: the one in force, without one the first that may be chosen. */
export const comparedWith = (choice: MethodChoice): Equation | undefined =>
  choice.chosen ?? choice.read[0] ?? choice.own[0];

/** From this age on nobody of an equation's group is a child or an adolescent. */
const GROWN_UP = 20;

const isForChildren = ({ population: { ageYears } }: Equation): boolean =>
  ageYears !== undefined && ageYears[1] < GROWN_UP;

/** Whether a quantity has equations that were made for children and adolescents alone. */
export const hasForChildren = (choice: MethodChoice): boolean =>
  [...choice.read, ...choice.own, ...choice.fromMemory].some(isForChildren);

/** The others of a quantity: those that may be chosen here; all from memory and those for children where that is asked for. */
export const othersOf = (
  choice: MethodChoice,
  switchedOn: readonly string[],
  also: { readonly allFromMemory: boolean; readonly forChildren: boolean },
): readonly Equation[] => {
  const against = comparedWith(choice);
  const fromMemory = choice.fromMemory.filter(({ id }) => also.allFromMemory || switchedOn.includes(id));
  return [...choice.read, ...choice.own, ...fromMemory].filter(
    (equation) => equation.id !== against?.id && (also.forChildren || !isForChildren(equation)),
  );
};

const digitsOf = (equation: Equation): number => (commonUnit(equation) === 'kcal/d' ? 0 : 1);

const writeWith = (against: Equation, f: Formatters): ((value: number) => string) => {
  const unit = commonUnit(against);
  return (value) => `${f.change(value, unit, digitsOf(against))}\u00A0${f.unit(unit)}`;
};

/** How far the medians of the other equations lie apart, in a sentence. */
export const compareFinding = (
  { against, differences }: EquationComparison,
  words: Words,
  f: Formatters,
): string | undefined => {
  const sorted = differences.toSorted((one, other) => one.quantiles.p50 - other.quantiles.p50);
  const [least] = sorted;
  const most = sorted.at(-1);
  if (least === undefined || most === undefined) return undefined;
  const write = writeWith(against, f);
  const quantity = words.quantity[against.quantity];
  if (sorted.length === 1)
    return words.compare.findingOne({
      quantity,
      median: write(least.quantiles.p50),
      name: least.equation.name,
      against: against.name,
    });
  return words.compare.finding({
    quantity,
    least: write(least.quantiles.p50),
    leastName: least.equation.name,
    most: write(most.quantiles.p50),
    mostName: most.equation.name,
    against: against.name,
  });
};

/** The figure's data: a row per equation in the order of their medians. */
export const compareFigure = (
  { against, differences }: EquationComparison,
  words: Words['compare'],
): DifferenceSpreadData => ({
  title: words.axis({ against: against.name }),
  unit: commonUnit(against),
  digits: digitsOf(against),
  rows: differences
    .toSorted((one, other) => one.quantiles.p50 - other.quantiles.p50)
    .map((row) => ({
      id: row.equation.id,
      label: row.equation.name,
      nText: words.people({ n: row.n, outside: row.outside }),
      differences: row.differences,
      quantiles: row.quantiles,
    })),
});

/** The same as a table, in the common unit. */
export const compareColumns = (against: Equation, words: Words): readonly DataColumn<EquationDifference>[] => {
  const said = words.compare.columns;
  const unit = commonUnit(against);
  const change = (id: string, title: string, value: (row: EquationDifference) => number | null) =>
    ({ id, title, kind: 'change', unit, digits: digitsOf(against), value }) as const;
  return [
    { id: 'equation', title: said.equation, value: ({ equation }) => equation.name, width: 'wide' },
    { id: 'n', title: said.n, kind: 'number', value: ({ n }) => n },
    { id: 'outside', title: said.outside, kind: 'number', value: ({ outside }) => outside },
    change('mean', said.mean, ({ mean }) => mean),
    { id: 'sd', title: said.sd, kind: 'number', unit, digits: digitsOf(against), value: ({ sd }) => sd },
    change('p5', said.p5, ({ quantiles }) => quantiles.p5),
    change('median', said.median, ({ quantiles }) => quantiles.p50),
    change('p95', said.p95, ({ quantiles }) => quantiles.p95),
    { id: 'status', title: said.status, value: ({ equation }) => words.statusShort[equation.verification] },
  ];
};
