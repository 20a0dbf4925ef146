import type { Formatters } from '../../formatters';

/** Words of the question which measurement error judges the changes. */
export const importErrorSource = (f: Formatters) => ({
  title: 'Which error?',
  question: 'By which measurement error are changes judged?',
  why: 'A change says something only against the error of measuring twice. It is best measured here: the same people again on another day.',
  choice: 'Error',
  own: 'Measured here',
  ownFound: (p: { visits: number }) =>
    p.visits === 0
      ? 'No visit is marked as precision in these files.'
      : `${f.plural(p.visits, 'One precision visit', '# precision visits')} found.`,
  ownConsequence:
    'Judged by your own between-day error: provisional from 10 degrees of freedom, firm from 30 with 15 people. Below that no change is judged.',
  entered: 'Entered, with its degrees of freedom',
  enteredConsequence:
    'Judged by the SD you write here, for the values you write it for; provisional below 30 degrees of freedom. Your own study takes its place from 10 degrees of freedom.',
  published: 'Published, not your clinic',
  publishedConsequence:
    'Resistance, impedance and what equations make of them are judged, by 14 Ω between visits (12 older people, four visits in two months, 36 degrees of freedom; J Gerontol 1997;52A:M137–M141). Not your clinic, provisional, resistance only: the errors of weight and reactance are left out, so true thresholds of lean and fat values are larger. Weight, reactance and phase angle stay without a threshold.',
  none: 'None yet',
  noneConsequence:
    'Values and their paths are shown; no change is judged, and nobody is listed for a change, until there is an error study.',
  measure: 'Value',
  sd: (p: { unit: string }) => (p.unit === '' ? 'SD between days' : `SD between days, ${p.unit}`),
  df: 'Degrees of freedom',
  add: 'Add a value',
  remove: 'Remove',
  removeOf: (p: { value: string }) => `Remove ${p.value}`,
  keep: 'Judge by this',
  kept: (p: { choice: string }) => `Changes are judged by: ${p.choice}.`,
  needsValue: 'Write an SD above 0 and whole degrees of freedom for at least one value.',
  wrongValue: (p: { value: string }) =>
    `${p.value}: the SD must be above 0 and the degrees of freedom a whole number from 1.`,
  twice: (p: { value: string }) => `${p.value} stands here twice.`,
});
