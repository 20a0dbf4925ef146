import type { Settings } from '../../../lib/cohort/settings';
import type { Catalogue } from '../../../lib/measures/catalogue';
import type { MethodChoice } from '../../../lib/workspace/method-choices';
import type { MethodEntry } from './method-entries';

/** How an entry is used in the open clinic. */
export type EntryUse = 'inForce' | 'switchedOn' | 'followed' | 'no';

/** Whether a clinic computes with an entry, follows it, or only could. */
export const entryUse = (
  entry: MethodEntry,
  catalogue: Catalogue,
  choices: readonly MethodChoice[],
  methods: Settings['methods'],
): EntryUse => {
  switch (entry.kind) {
    case 'value':
      return catalogue.follows(entry.measureId) ? 'followed' : 'no';
    case 'equation':
      if (choices.some(({ chosen }) => chosen?.id === entry.equation.id)) return 'inForce';
      return methods.switchedOn.includes(entry.equation.id) ? 'switchedOn' : 'no';
    case 'reference':
      return entry.reference.kind === 'own-cohort' ? 'inForce' : 'no';
    case 'cut-off':
      return 'no';
  }
};
