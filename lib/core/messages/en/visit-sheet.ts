import type { Formatters } from '../../formatters';

const CONDITIONS: Readonly<Record<string, string>> = {
  fasting: 'fasting',
  contact: 'the contact check',
  exercise: 'no exercise before',
  alcohol: 'no alcohol before',
  large_drink: 'no large drink before',
  bladder: 'bladder emptied',
  rested: 'rested',
  acute_illness: 'no acute illness',
  medication: 'medication unchanged',
};

/** The sheet for whoever measures: who comes, and what has to be as last time. */
export const visitSheet = (f: Formatters) => ({
  title: 'Visit sheet',
  headline: (p: { now: number; next: number }) =>
    p.now + p.next === 0
      ? 'Nobody is due this week or next.'
      : `${p.now === 0 ? 'Nobody is' : f.plural(p.now, 'One person is', '# people are')} due this week, ${p.next === 0 ? 'nobody' : f.number(p.next)} next week.`,
  lead: 'By the planned weeks of each program; a page a day. Measured as last time, a change can be compared.',
  show: 'Show',
  when: { 'this-week': 'This week', 'next-week': 'Next week', overdue: 'Overdue' },
  print: 'Print',
  checklist: 'Checklists for the room',
  empty: {
    'this-week': 'Nobody is due this week.',
    'next-week': 'Nobody is due next week.',
    overdue: 'Nobody is overdue.',
  },
  overdue: 'Overdue, without a day',
  pageOf: (p: { title: string; page: number; pages: number }) =>
    p.pages === 1 ? p.title : `${p.title}, page ${f.number(p.page)} of ${f.number(p.pages)}`,
  people: (p: { n: number }) => f.plural(p.n, 'one client', '# clients'),
  review: (p: { week: number }) => `review of week ${f.number(p.week)}`,
  visit: (p: { week: number }) => `visit of week ${f.number(p.week)}`,
  dueOn: (p: { day: string }) => `due ${p.day}`,
  asLast: (p: { day: string }) => `As last time (${p.day})`,
  firstTime: 'First visit',
  firstTimeNote: 'Write down device, hand-electrode position, posture and side: the next visit has to be the same.',
  position: (p: { position: string }) => `hand-electrode position ${p.position}`,
  side: (p: { side: string }) => `${p.side} side`,
  height: (p: { height: string }) => `height ${p.height} is kept`,
  unknownWay: 'device, position, posture and side were not recorded: write them down',
  baseline: 'Baseline was',
  baselineNote: (p: { way: string }) => `${p.way}. Changes are read against the baseline: measure as there.`,
  notMet: 'Not met last time',
  notMetNote: (p: { conditions: readonly string[] }) =>
    `${f.list(p.conditions.map((condition) => CONDITIONS[condition] ?? condition))}: ask before measuring.`,
  unknown: 'Unknown last time',
  unknownNote: (p: { conditions: readonly string[] }) =>
    `${f.list(p.conditions.map((condition) => CONDITIONS[condition] ?? condition))}: ask, and write it down.`,
  cautions: 'Cautions',
  cautionNote: {
    fluid:
      'Fluid was collected in the body: ask, look and note it; while it is there, no kilograms of muscle or fat are given.',
    body_geometry:
      'An amputation, paralysis, large metal or one-sided swelling is recorded: same side and way as last time; weight is judged, whole-body values are not.',
    under_18: 'Under 18: measure the height as well; changes are not held against an adult’s error.',
  } as Readonly<Partial<Record<string, string>>>,
  dialysis: 'After dialysis',
  dialysisNote: (p: { hours: number | null }) =>
    p.hours === null
      ? 'the time after the last session was not recorded; only visits at the same time after a session are compared.'
      : `last time ${f.plural(p.hours, '# hour', '# hours')} after a session; only visits at the same time after one are compared.`,
  before: 'Before measuring',
  implant: 'an implanted electronic device is recorded: follow the device’s instructions and the clinic’s rule.',
  twice: 'Measure twice',
  twiceWhy: {
    'near-threshold':
      'the last change lies near its threshold, and a second reading makes the error smaller. Step off, or lie down again, in between.',
    unexpected:
      'the last change was more than error and more than the program lets expect; a second reading shows whether this one repeats. Step off, or lie down again, in between.',
  },
  today: 'Today',
  boxes: '□ device  □ position  □ posture and side  □ conditions asked  □ second reading',
});
