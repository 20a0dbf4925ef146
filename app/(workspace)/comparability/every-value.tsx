'use client';

import type { SettingRow } from '../../../lib/cohort/types/comparability';
import type { Purpose } from '../../../lib/cohort/types/filter';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { useCohortQuery } from '../../_state/use-cohort-query';
import { useValueWords } from '../../_state/use-value-words';
import { Answered } from '../../_ui/answered';
import { CountTable } from './count-table';
import { settingCells, settingColumns } from './setting-cells';

/** What each setting makes of every value that is followed and held by a pair. */
export const EveryValue = ({ purpose }: { readonly purpose: Purpose }) => {
  const words = useMessages().comparability.settings;
  const formatters = useFormatters();
  const valueWords = useValueWords();
  const query = useCohortQuery<readonly SettingRow[]>(
    `compared settings of every value ${purpose}`,
    async (cohort, filter, signal) => {
      const rows: SettingRow[] = [];
      for (const measure of cohort.listed)
        rows.push(...(await cohort.comparedSettings({ ...filter, measure }, purpose, signal)));
      return rows.filter(({ nPairs }) => nPairs > 0);
    },
  );
  return (
    <Answered part query={query}>
      {(rows) => (
        <CountTable
          caption={words.everyValue}
          columns={[words.value, words.setting, ...settingColumns(words)]}
          rows={rows.map((row) => [
            valueWords(row.measure).title,
            words.settingName[row.setting],
            ...settingCells(row, words, formatters),
          ])}
        />
      )}
    </Answered>
  );
};
