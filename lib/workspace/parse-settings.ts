import { settingsSchema, type Settings } from '../cohort/settings';
import type { AppError } from '../core/app-error';
import { err, ok, type Result } from '../core/result';

/** Settings from JSON text; the error names the place and what is wrong there. */
export const parseSettings = (text: string): Result<Settings, AppError> => {
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    return err({
      code: 'settings_not_json',
      message: 'The settings are not JSON.',
      remedy: 'Check commas and quotation marks.',
    });
  }
  const parsed = settingsSchema.safeParse(json);
  if (parsed.success) return ok(parsed.data);
  const [issue] = parsed.error.issues;
  const place = issue?.path.map(String).join('.') ?? '';
  return err({
    code: 'settings_unreadable',
    message: `The settings cannot be used: ${place === '' ? '' : `${place}: `}${issue?.message ?? 'unknown'}.`,
    remedy: 'Correct that place. The file sample-data/settings.json shows every key.',
  });
};
