import { z } from 'zod';
import { SI_UNITS } from '../core/units';

const PREFERENCES_KEY = 'driftline-preferences';
// public/theme.js reads this key before the first paint.
const THEME_KEY = 'driftline-theme';

const preferencesSchema = z.object({
  locale: z.enum(['en-GB', 'en-US']).catch('en-GB'),
  units: z
    .object({ mass: z.enum(['kg', 'lb']), length: z.enum(['cm', 'ft-in']), energy: z.enum(['kcal', 'kJ']) })
    .catch(SI_UNITS),
});

export type Preferences = z.infer<typeof preferencesSchema>;
export type Theme = 'auto' | 'light' | 'dark';

export const DEFAULT_PREFERENCES: Preferences = { locale: 'en-GB', units: SI_UNITS };

const readItem = (key: string): string | null => {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
};

/** False where the browser keeps nothing: the choice then lasts until the page is closed. */
const writeItem = (key: string, value: string | null): boolean => {
  try {
    if (value === null) localStorage.removeItem(key);
    else localStorage.setItem(key, value);
    return true;
  } catch {
    return false;
  }
};

/** What one person prefers to read on this machine: language forms and units. Anything unreadable is the default. */
export const readPreferences = (): Preferences => {
  try {
    return preferencesSchema.parse(JSON.parse(readItem(PREFERENCES_KEY) ?? '{}'));
  } catch {
    return DEFAULT_PREFERENCES;
  }
};

export const writePreferences = (preferences: Preferences): boolean =>
  writeItem(PREFERENCES_KEY, JSON.stringify(preferences));

export const readTheme = (): Theme => {
  const kept = readItem(THEME_KEY);
  return kept === 'light' || kept === 'dark' ? kept : 'auto';
};

export const writeTheme = (theme: Theme): boolean => writeItem(THEME_KEY, theme === 'auto' ? null : theme);
