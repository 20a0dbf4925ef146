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
  /** Written beside every change that is made here; empty until someone said who is here. */
  initials: z.string().max(6).catch(''),
  /** A sealed clinic locks after so many minutes without a touch; 0 = never. */
  idleLockMinutes: z.union([z.literal(0), z.literal(5), z.literal(15), z.literal(30)]).catch(15),
  /** The line that says where the data lies was read and closed. */
  keepingNoticeRead: z.boolean().catch(false),
});

export type Preferences = z.infer<typeof preferencesSchema>;
export type Theme = 'auto' | 'light' | 'dark';

export const DEFAULT_PREFERENCES: Preferences = {
  locale: 'en-GB',
  units: SI_UNITS,
  initials: '',
  idleLockMinutes: 15,
  keepingNoticeRead: false,
};

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

/** What one person prefers on this machine: language forms, units, initials, when to lock. Anything unreadable is the default. */
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
