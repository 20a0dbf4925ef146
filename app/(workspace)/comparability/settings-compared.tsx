'use client';

import { useState } from 'react';
import type { SettingRow } from '../../../lib/cohort/types/comparability';
import type { Purpose } from '../../../lib/cohort/types/filter';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { useFilter } from '../../_state/use-filter';
import { useNamedMeasure } from '../../_state/use-named-measure';
import { AnchoredSection } from '../../_ui/anchored-section';
import styles from './comparability-screen.module.css';
import { CountTable } from './count-table';
import { EveryValue } from './every-value';
import { OpeningChoice } from './opening-choice';
import { settingCells, settingColumns } from './setting-cells';

interface SettingsComparedProps {
  readonly rows: readonly SettingRow[];
  readonly purpose: Purpose;
}

/** The three settings side by side for the chosen value, and for every value where it is asked for. */
export const SettingsCompared = ({ rows, purpose }: SettingsComparedProps) => {
  const words = useMessages().comparability.settings;
  const formatters = useFormatters();
  const { filter } = useFilter();
  const measure = useNamedMeasure(filter.measure);
  const [open, setOpen] = useState(false);
  return (
    <AnchoredSection id="settings" title={words.title} lead={words.lead} className="sheet">
      <CountTable
        caption={words.caption({ value: measure.name, level: filter.level })}
        columns={[words.setting, ...settingColumns(words)]}
        rows={rows.map((row) => [words.settingName[row.setting], ...settingCells(row, words, formatters)])}
      />
      <p className={styles.note}>{words.countNote}</p>
      <OpeningChoice />
      <details
        className={`${styles.more ?? ''} no-print`}
        onToggle={(event) => {
          setOpen(event.currentTarget.open);
        }}
      >
        <summary>{words.everyValue}</summary>
        {open ? <EveryValue purpose={purpose} /> : null}
      </details>
    </AnchoredSection>
  );
};
