import { settingsSchema, type Settings } from '../cohort/settings';
import type { AppError } from '../core/app-error';
import { ok, type Result } from '../core/result';
import { parseSettings } from './parse-settings';

/** Settings as JSON text to take along: without the answers about clients, and with everything that was left at its default. */
export const settingsFile = (settings: Settings): string => {
  const { answers: _, ...others } = settings;
  return `${JSON.stringify(others, null, 2)}\n`;
};

/**
 * Settings read from such a file, for the open clinic: its name and its answers about clients stay. The error names the
 * place in the file and what is wrong there.
 */
export const settingsFromFile = (text: string, present: Settings): Result<Settings, AppError> => {
  const parsed = parseSettings(text);
  if (!parsed.ok) return parsed;
  return ok(settingsSchema.parse({ ...parsed.value, clinic: present.clinic, answers: present.answers }));
};
