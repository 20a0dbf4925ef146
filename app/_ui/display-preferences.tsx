'use client';

import { useMemo, useState } from 'react';
import { readTheme, writeTheme, type Theme } from '../../lib/storage/preferences';
import { useMessages } from '../_state/language-provider';
import { useAfterHydration } from '../_state/use-after-hydration';
import styles from './display-preferences.module.css';
import { LabelledSelect } from './labelled-select';
import { UnitChoices } from './unit-choices';

const THEMES: readonly Theme[] = ['auto', 'light', 'dark'];

/** Units, date form and theme: one person's on this machine, so it changes no number and no file. */
export const DisplayPreferences = () => {
  const messages = useMessages().shell;
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
        <UnitChoices />
      </div>
    </details>
  );
};
