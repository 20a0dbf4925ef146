import type { ClientListRow } from '../../../lib/cohort/types/cohort-summary';
import type { Messages } from '../../../lib/core/messages/en';
import type { DataColumn } from '../../_ui/data-column';

/** Family name, given name; null where no name was exported. */
export const clientName = (client: Pick<ClientListRow, 'familyName' | 'givenName'>): string | null => {
  const parts = [client.familyName, client.givenName].filter((part) => part !== null && part !== '');
  return parts.length === 0 ? null : parts.join(', ');
};

/** The columns of the table of all clients. */
export const clientColumns = (words: Messages['clients']): readonly DataColumn<ClientListRow>[] => [
  { id: 'client', title: words.client, value: (row) => row.client, width: 'medium' },
  { id: 'name', title: words.name, value: clientName, width: 'wide' },
  { id: 'program', title: words.program, value: (row) => row.program, width: 'wide' },
  { id: 'sex', title: words.sex, value: (row) => (row.sex === null ? null : words.sexes[row.sex]), width: 'narrow' },
  { id: 'age', title: words.age, unit: 'a', kind: 'number', value: (row) => row.age, width: 'medium' },
  { id: 'site', title: words.site, value: (row) => row.site, width: 'narrow' },
  { id: 'visits', title: words.visits, kind: 'number', value: (row) => row.visits, width: 'narrow' },
  { id: 'latest', title: words.latest, kind: 'date', value: (row) => row.latest, width: 'medium' },
];
