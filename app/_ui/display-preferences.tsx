'use client';

import { useMemo, useState } from 'react';
import { readTheme, writeTheme, type Theme } from '../../lib/storage/preferences';
import { useMessages, usePreferences } from '../_state/language-provider';
import { useAfterHydration } from '../_state/use-after-hydration';
import styles from './display-preferences.module.css';
import { LabelledSelect } from './labelled-select';

const THEMES: readonly Theme[] = ['auto', 'light', 'dark'];

/** Units, date form and theme: one person's on this machine, so it changes no number and no file. */
export const DisplayPreferences = () => {
  const messages = useMessages().shell;
  const { preferences, setPreferences } = usePreferences();
  const { units, locale } = preferences;
  const hydrated = useAfterHydration();
  const kept = useMemo(() => (hydrated ? readTheme() : 'auto'), [hydrated]);
  const [chosen, setChosen] = useState<Theme | undefined>(undefined);

  const setTheme = (theme: Theme): void => {
    setChosen(theme);
    writeTheme(theme);
    const { dataset } = document.documentElement;
    if (theme === 'auto') delete dataset.theme;
    else dataset.theme = theme;
  };

  return (
    <details className={styles.details}>
      <summary>{messages.preferences}</summary>
      <div className={styles.choices}>
        <LabelledSelect
          label={messages.theme}
          value={chosen ?? kept}
          options={THEMES.map((theme) => ({ value: theme, label: messages.themes[theme] }))}
          onChange={setTheme}
        />
        <LabelledSelect
          label={messages.mass}
          value={units.mass}
          options={(['kg', 'lb'] as const).map((mass) => ({ value: mass, label: messages.massUnits[mass] }))}
          onChange={(mass) => {
            setPreferences({ ...preferences, units: { ...units, mass } });
          }}
        />
        <LabelledSelect
          label={messages.length}
          value={units.length}
          options={(['cm', 'ft-in'] as const).map((length) => ({ value: length, label: messages.lengthUnits[length] }))}
          onChange={(length) => {
            setPreferences({ ...preferences, units: { ...units, length } });
          }}
        />
        <LabelledSelect
          label={messages.dates}
          value={locale}
          options={(['en-GB', 'en-US'] as const).map((form) => ({ value: form, label: messages.dateForms[form] }))}
          onChange={(form) => {
            setPreferences({ ...preferences, locale: form });
          }}
        />
      </div>
    </details>
  );
};
