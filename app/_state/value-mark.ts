import type { Messages } from '../../lib/core/messages/en';
import type { Measure } from '../../lib/measures/measure';

/** What has to stand behind a value's name: that its equation is from memory, or the clinic's own; undefined where nothing has. */
export const valueMark = (
  measure: Pick<Measure, 'verification' | 'equation'> | undefined,
  words: Messages['methods']['mark'],
): string | undefined => {
  switch (measure?.verification) {
    case 'from-memory':
      return measure.equation === undefined ? words.fromMemory : words.equationFromMemory;
    case 'entered-by-clinic':
      return words.enteredByClinic;
    default:
      return undefined;
  }
};
