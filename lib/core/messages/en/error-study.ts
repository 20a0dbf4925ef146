import type { Formatters } from '../../formatters';

const by = { device: 'Device', operator: 'Operator', site: 'Site', program: 'Program' } as const;

const nouns = { device: 'device', operator: 'operator', site: 'site', program: 'program' } as const;

const groups = (f: Formatters) => ({
  title: 'By device, operator, site and program',
  lead: (p: { from: 'everyone' | keyof typeof by; own: number }) =>
    p.from === 'everyone'
      ? 'A group has its own error only with 30 degrees of freedom of its own. Thresholds come from all people together: a group’s own error stands beside them, so that a group that differs is seen.'
      : `Pairs are judged by the error of one ${nouns[p.from]} where both visits lie in it and it has 30 degrees of freedom from 15 people of its own: ${p.own === 0 ? 'none has, for this value' : f.plural(p.own, '# has, for this value', '# have, for this value')}. Every other pair is judged by everyone’s error, from people unlike these.`,
  caption: 'Error by group',
  by,
  none: 'not recorded',
  several: 'several, or not recorded',
  kind: { between: 'between days', repositioning: 'repositioning' },
  columns: {
    by: 'By',
    group: 'Group',
    kind: 'Error',
    people: 'People',
    df: 'df',
    pe: 'PE',
    range: 'PE, range',
    used: 'Note',
  },
  enough: '30 or more of its own',
  judges: (p: { lsc: string }) => `judges its own pairs: LSC ${p.lsc}, one reading at each end`,
  few: 'not used: fewer than 30 df; judged from people unlike these',
  rowsWord: 'groups',
  fileName: 'error-by-group',
  range: (p: { low: string; high: string }) => `${p.low} to ${p.high}`,
  note: (p: { df: number }) => `${f.number(p.df)} df`,
});

const choices = (f: Formatters) => ({
  title: 'How the threshold is made',
  link: 'How the threshold is made: factor, whose error judges, routine visits, relative form',
  lead: 'These choices hold for every result of this clinic. Each is entered in the log and can be undone.',
  factor: 'Factor',
  factors: {
    conventional: 'z from 30 df, t below',
    always: 't always',
    cautious: 'cautious: upper limit of PE',
  },
  factorNote:
    'z from 30 degrees of freedom is the convention of the field. t allows for an estimated error. Cautious takes the one-sided 95 % upper limit of PE: thresholds grow, and fewer unchanged people are called changed.',
  from: 'Error from',
  froms: {
    everyone: 'everyone',
    device: 'per device',
    site: 'per site',
    program: 'per program',
    operator: 'per operator',
  },
  fromNote:
    'Per group: a pair whose two visits lie in one group with 30 degrees of freedom from 15 people of its own is judged by that group’s error, every other pair by everyone’s, and it says so. A group’s repositioning error is its own from 30 degrees of freedom. The vector’s error stays everyone’s.',
  routine: 'Routine visits within a week count as pairs between days too',
  routineNote:
    'Visits that were repeated because a value looked odd make the error too large, and so does a change of the person in between; a study is better.',
  saved: 'Saved. Every result is computed anew.',
  logTitle: (p: { value: string }) => `Does the error of ${p.value} grow with its size?`,
  logTest: (p: { tau: string; z: string; p: string; ratio: string }) =>
    `Kendall’s τ-b of spread and mean ${p.tau} (z ${p.z}, one-sided p ${p.p}); the upper half has ${p.ratio} times the error of the lower half.`,
  logTooFew: 'Too little to test.',
  logSuggested:
    'A relative form is suggested: the error grows with the value. It is used only once a person accepts it, and stays until a person takes it back.',
  logNotSuggested:
    'A relative form is not suggested: that needs τ above 0 with p below 0.01, at least 30 degrees of freedom, and 1.5 times the error in the upper half.',
  logAccept: 'Judge this value by its logarithm',
  logTakeBack: 'Judge this value in its own unit again',
  logAccepted: (p: { on: string; initials: string; percent: string; now: string }) =>
    `Judged by its logarithm since ${p.on}${p.initials === '' ? '' : ` (${p.initials})`}: error of one reading ${p.percent} then, ${p.now} now.`,
  cv: (p: { percent: string }) => `RMS-%CV between days: ${p.percent}. Descriptive only: no threshold is made from it.`,
  percent: (value: number) => `${f.number(value, 1)} %`,
});

/** Words of the error study on the Repeatability screen: what it stands on, and what a person decides about it. */
export const errorStudy = (f: Formatters) => ({
  title: 'What the study stands on',
  none: 'No person was measured again on another day within a week, for this value.',
  people: (p: { clusters: number; visits: number }) =>
    `${f.plural(p.clusters, '# person-week', '# person-weeks')} with two or more comparable days, out of ${f.plural(p.visits, '# visit', '# visits')} of the study that hold the value.`,
  leftOut: (p: { n: number; reasons: string }) =>
    `${f.plural(p.n, '# visit was', '# visits were')} left out as not comparable with the first of the week: ${p.reasons}.`,
  nothingLeftOut: 'No visit was left out as not comparable.',
  alone: (p: { n: number }) =>
    `${f.plural(p.n, '# visit stands', '# visits stand')} alone in the week: repeated readings there count for repositioning, not between days.`,
  reason: (p: { reason: string; n: number }) => `${p.reason} (${f.number(p.n)})`,
  programStarted: 'a program began in that week or the fortnight before',
  routine: (p: { n: number }) =>
    `${f.plural(p.n, '# of them is made of routine visits', '# of them are made of routine visits')}.`,
  drift: (p: { kind: 'visit' | 'reading'; mean: string; low: string; high: string; n: number }) =>
    `Second ${p.kind} minus first: ${p.mean} on average (95 % interval ${p.low} to ${p.high}, n = ${f.number(p.n)}).`,
  driftSays: (p: { higher: boolean; without: string }) =>
    `The second is systematically ${p.higher ? 'higher' : 'lower'}: a change or an effect of order, and PE holds it. Without it PE would be ${p.without}.`,
  noDrift: 'The interval holds zero: no drift is seen.',
  outlier: (p: { kind: string; client: string; date: string; c: string; limit: string; beyond: boolean }) =>
    `Largest variance ${p.kind}: ${p.client}, ${p.date}. Cochran’s C ${p.c}, limit ${p.limit} at 5 %: ${p.beyond ? 'larger than the others let expect. Look at that visit; it is kept.' : 'within what the others let expect.'}`,
  outlierKind: { between: 'between days', repositioning: 'of repositioning' },
  cautionLine: 'Nothing is dropped for being large: an error study without its worst pairs promises too much.',
  figureTitle: (p: { value: string }) => `Does the second day differ more where ${p.value} is larger?`,
  figureSubtitle: (p: { n: number; level: number }) =>
    `Second minus first visit against the mean of the week, n = ${f.number(p.n)}. Band: the least significant change, ${f.number(p.level)} %, one reading at each end.`,
  figureCaption: 'From this clinic’s own error study. A point outside the band is kept.',
  meanTitle: (p: { value: string }) => `Mean of ${p.value} in the week`,
  differenceTitle: 'Second minus first',
  lines: { upper: 'LSC', bias: 'mean', lower: 'LSC' },
  quartersTitle: 'Does the error stay the same over time?',
  quartersSubtitle:
    'Precision error of one reading, by the quarter in which a person’s week began, with its χ² interval.',
  quartersCaption: 'Wide intervals: few pairs. A change of device, room or staff calls for a new study.',
  quarter: (p: { quarter: string; people: number }) =>
    `${p.quarter.replace('-', ' ')}, ${f.plural(p.people, '# person', '# people')}`,
  pe: 'Precision error',
  groups: groups(f),
  choices: choices(f),
});
