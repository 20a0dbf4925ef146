import type { Formatters } from '../../formatters';

const crossCheck = (f: Formatters) => ({
  title: 'Two devices against each other',
  lead: 'The same people on both devices one morning, marked crosscheck. Without it visits on different devices are not compared.',
  none: 'Nobody was measured on two devices on one day.',
  pair: (p: { first: string; second: string }) => `${p.second} minus ${p.first}`,
  choose: 'Value',
  people: (p: { n: number; leftOut: number }) =>
    `${f.plural(p.n, '# person', '# people')} on both devices; ${f.plural(p.leftOut, '# was', '# were')} left out as not comparable apart from the device.`,
  notEnough: 'Not enough: a conversion needs 30 people on both devices.',
  bias: (p: { value: string; bias: string; low: string; high: string; lower: string; upper: string; n: number }) =>
    `${p.value}: ${p.bias} on average (95 % interval ${p.low} to ${p.high}); for about 95 of 100 people between ${p.lower} and ${p.upper} (n\u00A0=\u00A0${f.number(p.n)}).`,
  figureTitle: (p: { value: string; first: string; second: string }) =>
    `${p.value}: ${p.second} minus ${p.first}, against the mean of both`,
  figureSubtitle: (p: { n: number }) => `n = ${f.number(p.n)}. Lines: mean difference and limits of agreement.`,
  figureCaption: 'Limits of agreement after Bland and Altman (Stat Methods Med Res 1999;8:135–160).',
  meanTitle: 'Mean of both devices',
  off: 'Off: pairs across these devices cannot be compared.',
  accept: 'Accept: compare with conversion',
  takeBack: 'Take back: do not compare across these devices',
  accepted: (p: { on: string; initials: string; r: string; xc: string; weight: string; people: number }) =>
    `Accepted on ${p.on}${p.initials === '' ? '' : ` by ${p.initials}`}, from ${f.plural(p.people, '# person', '# people')}: R ${p.r}, Xc ${p.xc}, weight ${p.weight}. The later visit is converted to the earlier one’s device, the threshold grows by the error of the conversion, and every such result says so. Values that a device computed itself are not converted.`,
  acceptNote:
    'Pairs across these devices are then compared: resistance, reactance and weight of the later visit are converted by the mean difference, and the threshold grows. It holds as it was accepted; new cross-checks do not change it by themselves.',
  saved: 'Saved. Every result is computed anew.',
});

/** So many dates are named before the rest is counted. */
const SHOWN = 4;

const log = (f: Formatters) => ({
  title: 'Device log',
  lead: 'A test body or one member of staff, measured on each device again and again: a device that begins to measure differently is seen here before it is taken for a change in people.',
  none: 'No entry yet.',
  device: 'Device',
  kind: 'Measured',
  kinds: { phantom: 'test body', volunteer: 'member of staff' },
  date: 'Date',
  r: 'R (Ω)',
  xc: 'Xc (Ω), may be empty',
  add: 'Enter',
  wrong: 'A device, a date and a resistance above zero are needed.',
  entered: 'Entered.',
  remove: 'Remove the last entry of this device',
  removed: 'Removed.',
  figureTitle: (p: { device: string; kind: string }) => `${p.device}, ${p.kind}: does it still measure the same?`,
  figureSubtitle: (p: { n: number; bases: readonly { readonly from: string | null; readonly n: number }[] }) =>
    `Resistance at 50 kHz, ${f.plural(p.n, '# reading', '# readings')}. Line and band: mean and limits from ${f.list(
      p.bases.map(({ from, n }) => `the first ${f.number(n)}${from === null ? '' : ` from the step of ${from} on`}`),
    )}.`,
  figureCaption:
    'Individuals chart: mean ± 3 × mean moving range / 1.128 (NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2). A reading outside asks for a look at the device, not at a client.',
  axis: 'Resistance',
  outside: (p: { n: number; dates: readonly string[] }) =>
    `${f.plural(p.n, '# reading lies', '# readings lie')} outside the limits: ${p.dates.slice(0, SHOWN).join(', ')}${p.n > SHOWN ? ` and ${f.number(p.n - SHOWN)} more` : ''}.`,
  suggested: (p: { on: string; side: 'above' | 'below'; n: number }) =>
    `All ${f.number(p.n)} readings from ${p.on} on lie ${p.side} the mean: this looks like a step. Look for what happened to the device then. A step is a person’s decision; nothing follows from this sentence.`,
  inside: 'All readings lie inside the limits.',
  apart: (p: { n: number }) =>
    `${f.plural(p.n, 'A marked step divides', '# marked steps divide')} the readings: those before and after are not held against each other’s limits.`,
  tooFewSince: (p: { on: string }) =>
    `From the step of ${p.on} on there are no limits yet: they need two readings; 20 make them steady.`,
  tooFew: 'At least two readings are needed for limits; 20 make them steady.',
  step: 'A step: from this day on it measures differently',
  stepReason: 'Reason',
  stepAdd: 'Mark the step',
  stepSaid: 'Marked. Visits before and after count as two devices.',
  stepNote:
    'From that day on the chart has limits of its own. Visits before and after a step on this device are not compared unless a cross-check joins them.',
  steps: (p: { on: string; reason: string; initials: string }) =>
    `Step on ${p.on}${p.reason === '' ? '' : `: ${p.reason}`}${p.initials === '' ? '' : ` (${p.initials})`}.`,
  stepRemove: 'Take the step back',
  stepRemoved: 'Taken back.',
});

/** Words of the devices on the Repeatability screen: cross-check and log. */
export const devices = (f: Formatters) => ({ crossCheck: crossCheck(f), log: log(f) });
