import type { Formatters } from '../../formatters';

/** The two lists of people to turn to, here in full and on This week in short. */
export const contact = (f: Formatters) => ({
  title: 'To contact',
  talkTo: 'Talk to',
  talkToFor: 'for the dietitian',
  measureAgain: 'Measure again',
  measureAgainFor: 'for whoever measures',
  headline: (p: { talk: number; again: number }) =>
    `${f.plural(p.talk, 'One person to talk to', '# people to talk to')}, ${f.plural(p.again, 'one to measure again', '# to measure again')}.`,
  headlineNobody: 'Nobody to talk to or to measure again.',
  yield: (p: { checked: number; about: string; from: string; to: string; listed: number }) =>
    `${f.plural(p.checked, '# client', '# clients')} checked: about ${p.about} would be on Talk to by measurement error alone (${p.from} to ${p.to}), ${f.number(p.listed)} ${p.listed === 1 ? 'is' : 'are'}.`,
  yieldUnknown: (p: { checked: number }) =>
    `${f.plural(p.checked, '# client', '# clients')} checked. There is no own between-day error study, so nobody can be listed by it.`,
  made: (p: { value: string; level: number }) =>
    `Listed: ${p.value} changed from baseline beyond what the program lets expect by more than this clinic’s measurement error (${f.number(p.level)} %), at the latest visit within six weeks, in an open program. The largest unexpected change stands first.`,
  emptyTalk: 'Nobody’s change is beyond error and expectation.',
  emptyAgain: 'Nobody’s latest visit has to be measured again.',
  program: (p: { program: string; week: number | null }) =>
    p.week === null ? p.program : `${p.program}, week ${f.number(p.week)}`,
  changed: (p: { value: string; down: boolean; amount: string; since: string; weeks: number }) =>
    `${p.value} ${p.down ? '▼ down' : '▲ up'} ${p.amount} since ${p.since} (${f.plural(p.weeks, '# week', '# weeks')})`,
  beyond: (p: { lsc: string }) => `more than this clinic’s measurement error in this estimate, ${p.lsc}`,
  justBeyond: (p: { lsc: string }) => `just beyond this clinic’s measurement error in this estimate, ${p.lsc}`,
  withinError: (p: { lsc: string }) => `within this clinic’s measurement error, ${p.lsc}`,
  noError: 'no threshold yet',
  expected: (p: { expected: string; excess: string }) =>
    `The program lets expect ${p.expected}; ${p.excess} is beyond that.`,
  howSure: (p: { visits: string; tier: string; level: number; comparable: string }) =>
    `${p.visits}; ${p.tier} at ${f.number(p.level)} %; ${p.comparable}.`,
  seenTwice: 'Seen at two visits',
  seenOnce: 'First sight, at one visit',
  readings: (p: { from: number; to: number }) =>
    p.from === p.to
      ? f.plural(p.from, 'single readings', '# readings at each visit')
      : `${f.plural(p.from, '# reading', '# readings')}, then ${f.number(p.to)}`,
  weightPart: (p: { part: string; change: string }) =>
    `${p.part} of the ${p.change} comes from the change in weight alone`,
  weightNothing: 'Nothing of it comes from the change in weight',
  weightOpposed: (p: { part: string }) => `The change in weight alone would read as ${p.part}`,
  leftBeyond: (p: { left: string; lsc: string }) => `without it, ${p.left} is left, more than its error of ${p.lsc}.`,
  leftWithin: (p: { left: string; lsc: string }) => `without it, ${p.left} is left, within its error of ${p.lsc}.`,
  leftUnknown: (p: { left: string }) => `without it, ${p.left} is left.`,
  fits: {
    'cell-mass': (p: { phase: string; lsc: string }) =>
      `Phase angle ${p.phase}, more than its error of ${p.lsc}: fits cell mass rather than water.`,
    water: (p: { phase: string; lsc: string }) =>
      `Impedance rose while the phase angle (${p.phase}) stayed within its error of ${p.lsc}: fits less water.`,
    'cannot-tell': (p: { phase: string; lsc: string }) =>
      `Phase angle ${p.phase}, within its error of ${p.lsc}: impedance cannot tell water from muscle with one pair of visits.`,
  },
  next: 'Next:',
  nextTalkTwice: 'talk about intake, illness, medication and activity; look at strength.',
  nextTalkOnce: 'talk about intake, illness and medication, and measure again within two weeks, rested and fasting.',
  why: {
    'cannot-compare': (p: { latest: string; baseline: string; reasons: string }) =>
      `The visit of ${p.latest} cannot be compared with the baseline of ${p.baseline}: ${p.reasons}.`,
    'other-baseline': (p: { latest: string; baseline: string; reasons: string }) =>
      `The baseline of ${p.baseline} cannot be compared with ${p.latest}: ${p.reasons}.`,
    'fits-less-water': (p: { change: string; beyond: string }) =>
      `${p.change}, ${p.beyond}. Impedance rose and the phase angle stayed within error: this fits less water.`,
    'near-threshold': (p: { change: string; beyond: string }) => `${p.change}, ${p.beyond}.`,
    caution: (p: { change: string; beyond: string; reasons: string }) =>
      `${p.change}, ${p.beyond}; with a caution: ${p.reasons}.`,
  },
  noReason: 'the conditions differ',
  otherBaseline: (p: { date: string }) => `The visit of ${p.date} would serve as baseline.`,
  nextAgain: {
    'cannot-compare': (p: { baseline: string }) => `measure again as on ${p.baseline}.`,
    'other-baseline': (p: { baseline: string }) =>
      `measure again in standard conditions; do not read a change from ${p.baseline}.`,
    'fits-less-water': () => 'measure again rested and fasting, before acting.',
    'near-threshold': () => 'measure again, with two readings.',
    caution: () => 'measure again in standard conditions.',
  },
  all: (p: { n: number }) => `all ${f.number(p.n)}`,
  stripOf: (p: { value: string }) => `${p.value}, last values in the error band`,
  shownOf: (p: { shown: number; all: number }) => `${f.number(p.shown)} of ${f.number(p.all)}`,
});
