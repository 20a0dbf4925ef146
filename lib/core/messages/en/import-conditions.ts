import type { Formatters } from '../../formatters';
import { importColumns } from './import-columns';

/** Words of the question about a clinic's written procedure. */
export const importConditions = (f: Formatters) => ({
  title: 'Conditions',
  question: (p: { site: string | null }) =>
    p.site === null ? 'Do you measure by a written procedure?' : `Do you measure by a written procedure at ${p.site}?`,
  missing: (p: { columns: readonly string[]; visits: number; from: string; to: string }) =>
    `${f.plural(p.visits, 'One visit', '# visits')} from ${p.from} to ${p.to} do not say under which conditions people were measured: ${f.list(
      p.columns.map((column) => importColumns[column] ?? column),
    )} ${p.columns.length === 1 ? 'is' : 'are'} missing or empty in every row.`,
  explanation:
    'If your clinic keeps a written procedure, declare what it requires. These conditions then count as met by procedure, beside the counts stands how many rest on it, and a recorded “no” still beats it. Without one, changes are compared all the same, and nothing is known about the conditions behind them.',
  conditionsLabel: 'The procedure requires',
  all: 'All of these',
  site: 'Where',
  everySite: 'at every site',
  from: 'From (empty: always)',
  to: 'Until (empty: still)',
  initials: 'Your initials',
  initialsNote: 'Stored with the declaration.',
  declare: 'Declare the procedure',
  keep: 'Keep the change',
  cancel: 'Leave it as it was',
  without: 'There is no written procedure',
  declared: (p: { n: number; site: string | null; from: string | null; to: string | null; initials: string }) => {
    const where = p.site === null ? 'all sites' : p.site;
    const since = p.from === null ? '' : ` from ${p.from}`;
    const until = p.to === null ? '' : ` to ${p.to}`;
    const when = p.from === null && p.to === null ? ', all dates' : `,${since}${until}`;
    return `${f.plural(p.n, '# condition counts', '# conditions count')} as met by procedure: ${where}${when}${
      p.initials === '' ? '' : ` (declared by ${p.initials})`
    }.`;
  },
  declaredTitle: 'Declared',
  leftOut: (p: { conditions: readonly string[] }) => `It leaves out, and no row records: ${f.list(p.conditions)}.`,
  addLeftOut: 'Add conditions',
  withoutAnswered: (p: { site: string | null; from: string | null; to: string | null; sites: boolean }) => {
    const where = p.site ?? (p.sites ? 'Visits that name no site' : 'All files');
    const when = `${p.from === null ? '' : ` from ${p.from}`}${p.to === null ? '' : ` to ${p.to}`}`;
    return `${where}${when === '' ? '' : `,${when}`}: no written procedure. The conditions stay unknown.`;
  },
  needsInitials: 'Write your initials, so that it is known who declared it.',
  needsCondition: 'Choose at least one condition.',
  wrongPeriod: 'The last day lies before the first.',
  edit: 'Change',
  editOf: (p: { n: number }) => `Change declaration ${f.number(p.n)}`,
  remove: 'Take it back',
  removeOf: (p: { n: number }) => `Take it back: declaration ${f.number(p.n)}`,
  change: 'Change the answer',
  more: (p: { n: number }) => f.plural(p.n, 'One more site asks the same.', '# more sites ask the same.'),
  condition: {
    fasting: 'fasting for 8 hours or more',
    contact: 'contact of the electrodes checked',
    exercise: 'no exercise for 12 hours',
    alcohol: 'no alcohol for 12 hours',
    large_drink: 'no large drink before',
    bladder: 'bladder emptied',
    rested: 'rested before measuring',
    acute_illness: 'not during acute illness',
    medication: 'after a change of medication the visit is postponed',
  } as Readonly<Record<string, string>>,
});
