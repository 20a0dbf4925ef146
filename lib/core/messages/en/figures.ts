import type { Formatters } from '../../formatters';

/** Words that the figures say themselves: axes, levels, text alternatives, headers of the tables behind them. */
export const figures = (f: Formatters) => ({
  nothingToDraw: 'Nothing to draw: no value fits the filters.',
  group: (p: { label: string; n: number }) => `${p.label} (${f.number(p.n)})`,
  level: (p: { share: number }) => f.percent(p.share),
  leftOut: (p: { n: number }) =>
    f.plural(
      p.n,
      '# point is left out: its value is not a number.',
      '# points are left out: their values are not numbers.',
    ),

  resistanceByHeight: 'Resistance / height',
  reactanceByHeight: 'Reactance / height',
  phaseAngle: 'Phase angle',
  degrees: 'degrees',
  fatFreeMassIndex: 'Fat-free mass index',
  fatMassIndex: 'Fat mass index',
  bodyMassIndex: 'Body mass index',
  fatShare: 'Fat, % of weight',
  bodyMassIndexLine: (p: { value: number }) => `BMI ${f.number(p.value, Number.isInteger(p.value) ? 0 : 1)}`,
  fatLine: (p: { share: number }) => `fat ${f.percent(p.share)}`,

  vectorGraph: (p: { groups: number; points: number }) =>
    `Resistance and reactance, each divided by height: ${f.plural(p.points, '# point', '# points')} in ${f.plural(p.groups, '# group', '# groups')}.`,
  vectorMean: (p: { label: string; n: number; x: number; y: number }) =>
    `${p.label}: n = ${f.number(p.n)}, mean ${f.number(p.x)} and ${f.number(p.y, 1)} Ω/m.`,
  groupWithoutMean: (p: { label: string; n: number }) => `${p.label}: n = ${f.number(p.n)}, no mean drawn.`,
  ellipses: (p: { label: string }) => `Ellipses: ${p.label}.`,
  references: (p: { levels: readonly string[]; label: string }) =>
    `Reference ellipses for ${f.list(p.levels)}: ${p.label}.`,
  path: (p: { n: number; from: string; to: string }) =>
    f.plural(
      p.n,
      `One client’s path of # visit, ${p.from}.`,
      `One client’s path of # visits, from ${p.from} to ${p.to}.`,
    ),
  indexChart: (p: { groups: number; points: number }) =>
    `Fat-free mass index across, fat mass index up: ${f.plural(p.points, '# point', '# points')} in ${f.plural(p.groups, '# group', '# groups')}.`,
  indexMean: (p: { label: string; n: number; x: number; y: number }) =>
    `${p.label}: n = ${f.number(p.n)}, mean ${f.number(p.x, 1)} and ${f.number(p.y, 1)} kg/m².`,

  columnGroup: 'Group',
  columnPoint: 'Point',
  columnDate: 'Date',
  columnValue: 'Value',
  columnState: 'State',
  columnPart: 'Part',
  columnProgram: 'Program',
  columnMeanChange: 'Mean change',
  columnInterval: 'Interval',
  columnErrorOfOne: 'Error of one person, ±',
  columnSeen: 'n',
  columnEstimate: 'Estimate',
  columnRange: 'Range',
  columnNote: 'Source',
  columnLimits: 'Limits',
  range: (p: { low: string; high: string }) => `${p.low} to ${p.high}`,

  state: {
    comparable: 'comparable with the baseline',
    'not-comparable': 'cannot be compared with the baseline',
    held: 'not judged',
  },
  condition: { met: 'met', 'met-by-procedure': 'met by procedure', 'not-met': 'not met', unknown: 'unknown' },
  lanePoint: (p: { title: string; value: string; date: string; state: string }) =>
    `${p.title} ${p.value}, ${p.date}, ${p.state}`,
  timeLanes: (p: { visits: number; from: string; to: string }) =>
    f.plural(p.visits, `# visit, ${p.from}.`, `# visits, from ${p.from} to ${p.to}.`),
  lane: (p: { title: string; first: string; last: string }) => `${p.title}: first ${p.first}, last ${p.last}`,
  laneBand: (p: { low: string; high: string }) => `error band ${p.low} to ${p.high}`,
  laneEmpty: (p: { title: string }) => `${p.title}: no value.`,
  laneNotComparable: (p: { n: number }) => f.plural(p.n, '# cannot be compared', '# cannot be compared'),
  breakAt: (p: { label: string; date: string }) => `Before ${p.date}: ${p.label}.`,

  changeTerms: (p: { title: string; change: string }) => `${p.title} ${p.change}, made of:`,
  changeTotal: 'change',
  term: (p: { label: string; value: string }) => `${p.label} ${p.value}`,

  programIntervals: (p: { title: string; programs: number }) =>
    `${p.title}: mean change with its interval in ${f.plural(p.programs, '# program', '# programs')}.`,
  programInterval: (p: { label: string; mean: string; low: string; high: string; n: string }) =>
    `${p.label}: ${p.mean} (${p.low} to ${p.high}), ${p.n}`,
  programWithout: (p: { label: string; n: string }) => `${p.label}: too few for an interval, ${p.n}`,
  tooFew: 'too few for an interval',
  errorOfOne: 'band: ± the error of one person',

  valueStrip: (p: { title: string; values: readonly string[] }) => `${p.title}: ${f.list(p.values)}`,
  stripBand: (p: { low: string; high: string }) => `error band ${p.low} to ${p.high}.`,
  stripEmpty: (p: { title: string }) => `${p.title}: no values yet.`,

  errorBars: (p: { title: string; values: number }) =>
    `${p.title}: ${f.plural(p.values, '# value', '# values')} with its range.`,
  errorBar: (p: { label: string; value: string; low: string; high: string; note: string }) =>
    `${p.label}: ${p.value} (${p.low} to ${p.high}), ${p.note}`,
  errorBarText: (p: { value: string; low: string; high: string }) => `${p.value} (${p.low} to ${p.high})`,
  multipleOfEstimate: 'times the estimate',

  agreement: (p: { title: string; n: number }) =>
    `${p.title}, against the mean of the two: ${f.plural(p.n, '# person', '# people')}.`,
  agreementTooFew: 'Too few people for bias and limits.',
  agreementPoint: (p: { label: string; mean: string; difference: string }) =>
    `${p.label}: difference ${p.difference}, mean ${p.mean}`,
  agreementNames: { upper: 'upper limit', bias: 'bias', lower: 'lower limit' },
  agreementLine: (p: { name: string; value: string }) => `${p.name} ${p.value}`,
  control: (p: { title: string; n: number; outside: number }) =>
    `${p.title} over time: ${f.plural(p.n, '# reading', '# readings')}, ${f.number(p.outside)} outside the limits.`,
  controlPoint: (p: { date: string; value: string; note: string }) =>
    p.note === '' ? `${p.date}: ${p.value}` : `${p.date}: ${p.value}, ${p.note}`,
  controlLine: (p: { id: 'upper' | 'centre' | 'lower'; value: string }) =>
    `${{ upper: 'upper limit', centre: 'mean', lower: 'lower limit' }[p.id]} ${p.value}`,
  controlBand: (p: { lines: readonly string[]; since: string | null }) =>
    `${p.since === null ? '' : `From ${p.since} on: `}${p.lines.join('; ')}.`,
  controlOutside: 'outside the limits',
  controlInside: 'inside the limits',
  controlStep: (p: { date: string }) => `step, ${p.date}`,
  spread: (p: { title: string; rows: number }) =>
    `${p.title}: ${f.plural(p.rows, '# equation', '# equations')}, median and the range of nine in ten people.`,
  spreadRow: (p: { label: string; median: string; low: string; high: string; n: string }) =>
    `${p.label}: ${p.median} (${p.low} to ${p.high}), ${p.n}`,
  spreadText: (p: { median: string; low: string; high: string }) => `${p.median} (${p.low} to ${p.high})`,
  count: (p: { n: number }) => f.number(p.n),
  countOf: (p: { n: number; of: number }) => `${f.number(p.n)} of ${f.number(p.of)}`,
  shareOf: (p: { share: number }) => {
    if (p.share > 0 && p.share < 0.005) return `under ${f.percent(0.01)}`;
    return p.share < 1 && p.share >= 0.995 ? `over ${f.percent(0.99)}` : f.percent(p.share);
  },
  sharePart: (p: { label: string; share: string }) => `${p.share} ${p.label}`,
  shareBar: (p: { label: string; parts: readonly string[] }) => `${p.label}: ${f.list(p.parts)}`,
  shareBars: (p: { title: string; rows: number }) => `${p.title}: ${f.plural(p.rows, '# bar', '# bars')}.`,
  columnAll: 'All',
  columnEquation: 'Equation',
  columnMedian: 'Median',
  columnMostPeople: '5 to 95 %',
});
