import type { Formatters } from '../../formatters';

/** Words of the Repeatability screen: how large a change must be, and where that number comes from. */
export const repeatability = (f: Formatters) => ({
  title: 'Repeatability',
  question: 'How large must a change be here?',
  answer: (p: {
    value: string;
    lsc: string;
    low: string | null;
    high: string | null;
    source: 'own' | 'entered' | 'published';
  }) => {
    const range = p.low === null || p.high === null ? '' : ` (${p.low} to ${p.high})`;
    const error = {
      own: 'this clinic’s own measurement error',
      entered: 'the error this clinic entered',
      published: 'a published error, which is not this clinic’s own',
    }[p.source];
    return `A change of ${p.value} must reach ${p.lsc}${range} to be more than ${error}.`;
  },
  answerRelative: (p: { value: string; up: string; down: string }) =>
    `A change of ${p.value} must reach ${p.up} times the earlier value, or fall to ${p.down} times it, to be more than this clinic’s own measurement error.`,
  factor: (p: { factor: string }) => `× ${p.factor}`,
  lowerLimit: (p: { value: string; lsc: string }) =>
    `A change of ${p.value} must be larger than ${p.lsc}; how much larger is not known here yet.`,
  noThreshold: (p: { value: string }) => `How large a change of ${p.value} must be is not known here yet.`,
  basis: (p: { people: number; df: number; level: number }) =>
    `From ${f.plural(p.people, '# person', '# people')} measured again on another day (${f.number(p.df)} degrees of freedom); two-sided, ${f.number(p.level)} %, one reading at each end.`,
  basisEntered: (p: { df: number; level: number }) =>
    `From a value entered in the settings (${f.number(p.df)} degrees of freedom); two-sided, ${f.number(p.level)} %, one reading at each end.`,
  atOwnValues: (p: { value: string }) =>
    `How large a change of ${p.value} must be depends on the client: a published error of the impedance, which is not this clinic’s own, is carried over at each client’s own values. Resistance only: the errors of reactance and weight are left out.`,
  basisPublished: (p: { people: number; df: number; level: number }) =>
    `From a published study of ${f.plural(p.people, '# person', '# people')} (${f.number(p.df)} degrees of freedom), not from this clinic; two-sided, ${f.number(p.level)} %, one reading at each end.`,
  changed: (p: { low: number; high: number }) =>
    `Of 100 people who did not change, between ${f.number(p.low)} and ${f.number(p.high)} would be called changed.`,
  overDays: 'Measured over days, not months: slower natural variation is not in it.',
  tier: {
    1: 'own, between days',
    2: 'own, between days',
    3: 'entered by the clinic',
    4: 'published, not your clinic',
    5: 'own, repositioning only (lower limit)',
    6: 'none',
  },
  tierLong: {
    1: 'From people measured again on another day, with 30 or more degrees of freedom.',
    2: 'From people measured again on another day, with 10 to 29 degrees of freedom: provisional, with the wider t factor.',
    3: 'A between-day error that the clinic entered, with its degrees of freedom.',
    4: 'A published between-day error of the impedance at 50 kHz: 14 Ω, 12 healthy older people measured four times within two months (J Gerontol 1997;52A:M137–M141). Not your clinic, provisional. It is carried over to what equations make of the impedance at each client’s own values; the errors of weight and reactance are left out. It says nothing about phase angle, reactance and weight.',
    5: 'From readings repeated at one visit after stepping off. A lower limit: larger than or within repositioning error, no result, on no list.',
    6: 'No error study holds this value, so no change of it is judged.',
  },
  lowerLimitNote:
    'This threshold holds only the error of stepping off and on again. Day-to-day variation (water, food, time of day) is not in it, so true thresholds are larger and many unchanged people will pass this one. Measure at least 30 people again on another day within a week to replace it.',
  provisional: 'provisional',
  provisionalNote: 'Provisional: fewer than 30 degrees of freedom, or fewer than 15 people.',
  why: {
    title: 'Why one reading repeated at once is not enough',
    repositioning: (p: { sw: string }) =>
      `Repositioning, SD ${p.sw}: what a second reading after stepping off differs by. Two readings at a visit shrink it.`,
    betweenDays: (p: { sb: string }) =>
      `Between days, SD ${p.sb}: what the same person differs by on another day, from water, food and time of day. No number of readings at one visit shrinks it.`,
    compare: (p: { value: string; without: string; full: string }) =>
      `With repositioning alone, ${p.value} would seem to need only ${p.without}; with both it is ${p.full}. The difference is what would be called change without being one.`,
    noReplicates: 'No repeated readings at one visit: the two parts cannot be told apart here.',
    formula:
      'Variance of a change with k₁ and k₂ readings: 2·(SD between days)² + (SD of repositioning)²·(1/k₁ + 1/k₂).',
    neededWithout: 'Repositioning alone would say',
    neededWith: 'Both parts say',
  },
  figureTitle: (p: { unit: string; level: number }) =>
    p.unit === ''
      ? `Least significant change with its range, ${f.number(p.level)} %`
      : `Least significant change of every value in ${p.unit}, with its range, ${f.number(p.level)} %`,
  figureCaption:
    'Point: the least significant change of one person, one reading at each end. Line: its range, from the χ² interval of the error’s variance. Values in other units stand in the table.',
  tableTitle: 'Every value',
  columns: {
    value: 'Value',
    unit: 'Unit',
    kind: 'Kind of error',
    people: 'People',
    df: 'df',
    pe: 'PE',
    peRange: 'PE, range',
    lsc: 'LSC',
    lscRange: 'LSC, range',
    changed: 'Of 100 unchanged, called changed',
    sw: 'SD, repositioning',
    sb: 'SD, between days',
  },
  columnsNote:
    'PE: precision error, the SD of one reading. LSC: least significant change of one person, one reading at each end. Both in the value’s unit.',
  range: (p: { low: string; high: string }) => `${p.low} to ${p.high}`,
  between: (p: { low: number; high: number }) => `${f.number(p.low)} to ${f.number(p.high)}`,
  relative: 'relative (log) form',
  barNote: (p: { tier: string; df: number }) => `${p.tier}, ${f.number(p.df)} df`,
  rowsWord: 'values',
  fileName: 'repeatability',
  noneTitle: 'No error study yet.',
  noneBody:
    'Nobody was measured twice under the same conditions, so no change can be judged: values and their paths are shown without a result.',
  noneRemedy:
    'Measure at least 30 people again on another day within a week, under the same conditions, and mark those visits as precision in the column visit_purpose. Or enter a between-day error under Settings.',
});
