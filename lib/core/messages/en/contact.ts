import type { Formatters } from '../../formatters';

const MEANT = {
  loss: 'to fall',
  gain: 'to rise',
  neither: 'to stay level',
  up: 'to rise',
  hold: 'not to fall',
} as const;

const DIRECTION = {
  'as-meant': 'the change is in the intended direction',
  'not-as-meant': 'the change is not in the intended direction',
  within: 'so far the change is within error',
} as const;

const BESIDE = {
  loss: DIRECTION,
  gain: DIRECTION,
  up: DIRECTION,
  neither: { ...DIRECTION, 'as-meant': 'it is within error', 'not-as-meant': 'it changed by more than error' },
  hold: {
    ...DIRECTION,
    'as-meant': 'it has not fallen by more than error',
    'not-as-meant': 'it has fallen by more than error',
  },
} as const;

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
    `Listed, at the latest visit within six weeks in an open program: ${p.value} changed from baseline beyond what the program lets expect by more than this clinic’s measurement error (${f.number(p.level)} %), or another rule below. Seen at two visits stands first, then the largest unexpected change.`,
  regression:
    'People listed for an extreme value tend to move back on their own. A repeat takes the place of the flagged visit; the two are never averaged.',
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
  meant: {
    sentence: (p: {
      value: string;
      /** Null: meant for this client. */
      program: string | null;
      intention: keyof typeof MEANT;
      beside: 'as-meant' | 'not-as-meant' | 'within';
    }) =>
      `${p.value} is meant ${MEANT[p.intention]} ${p.program === null ? 'for this client' : `in ${p.program}`}: ${BESIDE[p.intention][p.beside]}.`,
  },
  howSure: (p: { visits: string; tier: string; level: number; comparable: string }) =>
    `${p.visits}; ${p.tier} at ${f.number(p.level)} %; ${p.comparable}.`,
  withCare: (p: { what: string }) => `To be read with care: ${p.what}.`,
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
  rules: {
    'lean-change': 'Change beyond error and expectation',
    'lean-slope': 'Falling from visit to visit',
    'lean-share': 'Lean share of the weight lost',
    'weight-loss': 'Weight loss that was not meant',
  },
  slope: (p: { value: string; rate: string; threshold: string; visits: number; since: string }) =>
    `${p.value} falls by ${p.rate} a month over ${f.number(p.visits)} comparable visits since ${p.since}, beyond what the program lets expect; error alone reaches ${p.threshold} a month (99 %).`,
  best: (p: { n: number; date: string; change: string; threshold: string; beyond: boolean }) =>
    `Against the best of ${f.number(p.n)} earlier comparable visits (${p.date}): ${p.change}, ${p.beyond ? 'more than' : 'within'} the ${p.threshold} that error reaches when the best of ${f.number(p.n)} is taken.`,
  share: (p: { loss: string; lossPercent: string; share: string; low: string; high: string; limit: string }) =>
    `Of ${p.loss} weight lost (${p.lossPercent}), ${p.share} is lean by estimate (${p.low} to ${p.high} with the error of both), above this clinic’s limit of ${p.limit}.`,
  loss: (p: { percent: string; from: string; to: string; lsc: string; words: string }) =>
    `Weight ▼ down ${p.percent} from ${p.from} to ${p.to}, more than its error of ${p.lsc}, and the loss was not meant. ${p.words} A screening step and a cause belong to it.`,
  lossAsked: (p: { percent: string; from: string; to: string }) =>
    `Weight is down ${p.percent} from ${p.from} to ${p.to}: was that meant? Nobody has said; the program’s settings or the client’s file can.`,
  nextWeight: 'weigh again in standard clothing, ask about intake, illness and appetite, and screen by the local rule.',
  call: 'After the call',
  outcomes: {
    confirmed: 'Confirmed',
    explained: 'Explained',
    'not-reached': 'Not reached',
    'not-useful': 'Not useful',
  },
  calledAbout: (p: { client: string }) => `After the call with ${p.client}`,
  notReached: (p: { when: string; initials: string }) =>
    `Not reached on ${p.when}${p.initials === '' ? '' : `, ${p.initials}`}. The row stays.`,
  spoken: (p: { n: number }) => `Spoken about: ${f.number(p.n)}, until their next visit`,
  spokenRow: (p: { outcome: string; when: string; initials: string; visit: string }) =>
    `${p.outcome} on ${p.when}${p.initials === '' ? '' : `, ${p.initials}`}; about the visit of ${p.visit}`,
  takeBack: 'Take back',
  takeBackOf: (p: { client: string }) => `Take back what came of the call with ${p.client}`,
  callsLabel: 'Calls a week',
  callsSave: 'Save',
  callsSaved: 'Saved. The line stands after that many people.',
  callsBad: 'A whole number from 1 to 99, or empty for no line.',
  capacity: (p: { n: number }) => `${f.plural(p.n, 'One call', '# calls')} this week end here.`,
  perRule: 'What each rule looked at',
  ruleColumns: {
    rule: 'Rule',
    checked: 'Clients',
    alone: 'By error alone, about',
    listed: 'Listed',
    called: 'Called',
    confirmed: 'Confirmed',
    explained: 'Explained',
    notReached: 'Not reached',
    notUseful: 'Not useful',
  },
  notSaid: '–',
  ruleOff: (p: { rule: string }) => `${p.rule}: switched off.`,
  shareNeedsLimit: 'The lean share of a loss is not looked at: the clinic has set no limit.',
  shareEnterLimit: 'Enter one in Settings',
  retune: (p: { rule: string; n: number; of: number }) =>
    `${p.rule}: of ${f.plural(p.of, 'one person', '# people')} spoken to, ${f.number(p.n)} were not useful. Nothing changes by itself.`,
  switchTakes: (p: { n: number }) =>
    p.n === 0
      ? 'Without it the present list stays as it is: other rules list the same people.'
      : `Without it ${f.plural(p.n, 'one row leaves', '# rows leave')} the present list; the others stand there by other rules too.`,
  raiseMoves: (p: { percent: string; n: number }) =>
    p.n === 0
      ? `From ${p.percent} on nobody moves: the rows lie further out, or other rules list them too.`
      : `From ${p.percent} on ${f.plural(p.n, 'one row goes', '# rows go')} to Measure again.`,
  raiseNear: (p: { percent: string }) => `List a first sight only from ${p.percent} of its error on`,
  ruleNear: (p: { percent: string }) =>
    `A first sight under ${p.percent} of its error is measured again before anybody is called.`,
  switchOff: (p: { rule: string }) => `Switch off “${p.rule}”`,
  switchOn: (p: { rule: string }) => `Switch on “${p.rule}”`,
  retuned: 'Changed; undo takes it back.',
  status: 'At a published limit, said once',
  statusRow: (p: { value: string; amount: string; date: string; cutOff: string; words: string }) =>
    `${p.value} ${p.amount} on ${p.date}. ${p.cutOff}: ${p.words} It is read beside strength, by a professional.`,
  questions: (p: { n: number }) =>
    `${f.plural(p.n, 'One weight loss', '# weight losses')} of which nobody said whether it was meant`,
  groups: {
    'cannot-compare': 'The latest visit cannot be compared',
    'other-baseline': 'Only the baseline is at fault',
    'fits-less-water': 'Measure again first: fits less water',
    'near-threshold': 'First sight, close to the threshold',
    caution: 'The latest visit carries a caution',
  },
  fewer: 'show fewer',
  useBaseline: (p: { date: string }) => `Use ${p.date} as baseline`,
  useBaselineOf: (p: { client: string; date: string }) => `Use ${p.date} as baseline of ${p.client}`,
  baselineChosen: (p: { date: string; byDate: string }) =>
    `Baseline chosen by a person: ${p.date}. By date alone it would be ${p.byDate}.`,
  baselineChosenOnly: (p: { date: string }) => `Baseline chosen by a person: ${p.date}. By date alone there is none.`,
  baselineBack: 'Back to the baseline by date',
  all: (p: { n: number }) => `all ${f.number(p.n)}`,
  stripOf: (p: { value: string }) => `${p.value}, last values in the error band`,
  shownOf: (p: { shown: number; all: number }) => `${f.number(p.shown)} of ${f.number(p.all)}`,
});
