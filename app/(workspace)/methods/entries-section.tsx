'use client';

import { parseAsStringLiteral, useQueryStates } from 'nuqs';
import { useMemo } from 'react';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { useSession } from '../../_state/workspace-provider';
import { DataTable } from '../../_ui/data-table';
import { SegmentedChoice } from '../../_ui/segmented-choice';
import { entryColumns, type EntryRow } from './entry-columns';
import { entryUse } from './entry-use';
import { ABOUT, methodEntries } from './method-entries';
import { MethodsSection } from './methods-section';
import { OwnReferences } from './own-references';
import { useClinicMethods } from './use-clinic-methods';

const ALL = 'all';
const STATUSES = [
  'definition',
  'read-in-abstract',
  'read-in-secondary-text',
  'from-memory',
  'entered-by-clinic',
  'derived-from-open-data',
] as const;

/** What the list is narrowed to, in the address. */
const listParams = { about: parseAsStringLiteral(ABOUT), checked: parseAsStringLiteral(STATUSES) };

/** Every entry of the catalogue, to search and to open. */
export const EntriesSection = () => {
  const messages = useMessages();
  const words = messages.methodsEntries;
  const formatters = useFormatters();
  const { cohort, settings } = useSession();
  const { methods, choices, equations } = useClinicMethods();
  const [{ about, checked }, setParams] = useQueryStates(listParams, { history: 'push', scroll: false });
  const all = useMemo(
    (): readonly EntryRow[] =>
      methodEntries(cohort.catalogue, equations, methods.ownReferences).map((entry) => ({
        entry,
        used: entryUse(entry, cohort.catalogue, choices, settings),
      })),
    [cohort, equations, choices, methods, settings],
  );
  const rows = useMemo(
    () =>
      all.filter(
        ({ entry }) => (about === null || entry.about === about) && (checked === null || entry.status === checked),
      ),
    [all, about, checked],
  );
  const columns = useMemo(() => entryColumns(messages, formatters), [messages, formatters]);
  const present = STATUSES.filter((status) => all.some(({ entry }) => entry.status === status));
  return (
    <MethodsSection id="entries" lead={words.lead} printed={false}>
      <SegmentedChoice
        label={words.filterQuantity}
        value={about ?? ALL}
        options={[{ value: ALL, label: words.all }, ...ABOUT.map((one) => ({ value: one, label: words.about[one] }))]}
        onChange={(chosen) => {
          void setParams({ about: chosen === ALL ? null : chosen });
        }}
      />
      <SegmentedChoice
        label={words.filterStatus}
        value={checked ?? ALL}
        options={[
          { value: ALL, label: words.all },
          ...present.map((one) => ({ value: one, label: messages.methods.statusShort[one] })),
        ]}
        onChange={(chosen) => {
          void setParams({ checked: chosen === ALL ? null : chosen });
        }}
      />
      <div className="sheet">
        <DataTable
          caption={words.table}
          rows={rows}
          columns={columns}
          rowKey={({ entry }) => entry.id}
          href={({ entry }) => `/methods/?entry=${entry.id}`}
          fileName={words.fileName}
          rowsWord={words.rowsWord}
          searchLabel={words.search}
        />
      </div>
      <OwnReferences />
    </MethodsSection>
  );
};
