import type { ClientListRow } from '../../../lib/cohort/types/cohort-summary';
import type { Messages } from '../../../lib/core/messages/en';
import type { ClientNames } from '../../../lib/workspace/names-of-clients';
import type { AlsoFound, DataColumn } from '../../_ui/data-column';

/** A client of the table with the names that the clinic keeps. */
export interface NamedClient extends ClientListRow {
  readonly names: ClientNames;
}

/** What a search finds beside the name that is shown. */
const otherNames = ({ names }: NamedClient, words: Messages['clients']): readonly AlsoFound[] => [
  ...(names.exported === null || names.exported === names.shown
    ? []
    : [{ text: names.exported, sentence: words.inFiles({ name: names.exported }) }]),
  ...(names.alsoKnownAs === null
    ? []
    : [{ text: names.alsoKnownAs, sentence: words.alsoKnownAs({ names: names.alsoKnownAs }) }]),
];

/** The columns of the table of all clients. A file holds the exported name: what the clinic keeps of its own is in no export. */
export const clientColumns = (words: Messages['clients']): readonly DataColumn<NamedClient>[] => [
  { id: 'client', title: words.client, value: (row) => row.client, width: 'medium' },
  {
    id: 'name',
    title: words.name,
    value: (row) => row.names.shown,
    saved: (row) => row.names.exported,
    alsoFound: (row) => otherNames(row, words),
    width: 'wide',
  },
  { id: 'program', title: words.program, value: (row) => row.program, width: 'wide' },
  { id: 'sex', title: words.sex, value: (row) => (row.sex === null ? null : words.sexes[row.sex]), width: 'narrow' },
  { id: 'age', title: words.age, unit: 'a', kind: 'number', value: (row) => row.age, width: 'medium' },
  { id: 'site', title: words.site, value: (row) => row.site, width: 'narrow' },
  { id: 'visits', title: words.visits, kind: 'number', value: (row) => row.visits, width: 'narrow' },
  { id: 'latest', title: words.latest, kind: 'date', value: (row) => row.latest, width: 'medium' },
];
