import type { Messages } from '../../lib/core/messages/en';
import type { CutOff } from '../../lib/measures/cut-offs/cut-off';
import { valueMark } from './value-mark';

/** The name of a cut-off, with what has to stand behind it wherever somebody is classed by it. */
export const cutOffName = (
  { name, verification }: Pick<CutOff, 'name' | 'verification'>,
  words: Messages['methods']['mark'],
): string => {
  const mark = valueMark({ verification }, words);
  return mark === undefined ? name : `${name} (${mark})`;
};
