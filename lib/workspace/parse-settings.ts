import { chosenEquation, equationsOfClinic } from '../cohort/equations-in-force';
import { programProblems } from './program-problems';
import { settingsSchema, type Settings } from '../cohort/settings';
import type { AppError } from '../core/app-error';
import { programProblemWords } from '../core/messages/en/program-problems';
import { err, ok, type Result } from '../core/result';
import { QUANTITIES } from '../measures/equation';

/** What is wrong with an equation that the settings name; undefined where each can be in force. */
const equationTrouble = (settings: Settings): string | undefined => {
  const { equations } = settings.methods;
  for (const quantity of QUANTITIES) {
    const id = equations[quantity];
    if (id === null || chosenEquation(settings, quantity) !== undefined) continue;
    const isKnown = equationsOfClinic(settings).some((one) => one.id === id && one.quantity === quantity);
    const what = isKnown
      ? `“${id}” is from memory and not among methods.switchedOn`
      : `there is no equation “${id}” of this quantity`;
    return `methods.equations.${quantity}: ${what}`;
  }
  return undefined;
};

/** What is wrong with how a program is set; undefined where all can be kept. */
const programTrouble = ({ programs }: Settings): string | undefined => {
  for (const [place, program] of programs.entries()) {
    const others = programs.filter((_, other) => other !== place);
    const wrong = programProblems(program, others).find(({ severity }) => severity === 'error');
    if (wrong !== undefined) return `programs.${String(place)}.${wrong.field}: ${programProblemWords(wrong)}`;
  }
  return undefined;
};

/**
 * Settings from JSON text; the error names the place and what is wrong there. An equation that cannot be in force is an
 * error here: another one would silently compute in its stead; so is a program whose plan cannot be followed.
 */
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
  const trouble = parsed.success ? (equationTrouble(parsed.data) ?? programTrouble(parsed.data)) : undefined;
  if (parsed.success && trouble === undefined) return ok(parsed.data);
  const issue = parsed.error?.issues[0];
  const place = issue?.path.map(String).join('.') ?? '';
  return err({
    code: 'settings_unreadable',
    message: `The settings cannot be used: ${place === '' ? '' : `${place}: `}${trouble ?? issue?.message ?? 'unknown'}.`,
    remedy: 'Correct that place. The file sample-data/settings.json shows every key.',
  });
};
