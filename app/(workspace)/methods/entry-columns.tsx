import type { Formatters } from '../../../lib/core/formatters';
import type { Messages } from '../../../lib/core/messages/en';
import type { DataColumn } from '../../_ui/data-column';
import type { EntryUse } from './entry-use';
import { entryAbout, entryGroup, entryName } from './entry-words';
import { sourceOf, type MethodEntry } from './method-entries';

/** An entry of the list with where it is used. */
export interface EntryRow {
  readonly entry: MethodEntry;
  readonly used: EntryUse;
}

/** The columns of the catalogue. */
export const entryColumns = (messages: Messages, f: Formatters): readonly DataColumn<EntryRow>[] => {
  const words = messages.methodsEntries;
  return [
    { id: 'name', title: words.columns.name, value: ({ entry }) => entryName(entry, messages), width: 'wide' },
    { id: 'kind', title: words.columns.kind, value: ({ entry }) => words.kinds[entry.kind], width: 'narrow' },
    { id: 'about', title: words.columns.quantity, value: ({ entry }) => entryAbout(entry, messages), width: 'medium' },
    {
      id: 'madeFor',
      title: words.columns.madeFor,
      value: ({ entry }) => entryGroup(entry, messages, f),
      width: 'wide',
    },
    { id: 'source', title: words.columns.source, value: ({ entry }) => sourceOf(entry), width: 'wide' },
    {
      id: 'status',
      title: words.columns.status,
      value: ({ entry }) => messages.methods.status[entry.status],
      width: 'medium',
    },
    { id: 'used', title: words.columns.used, value: ({ used }) => words.used[used], width: 'narrow' },
  ];
};
