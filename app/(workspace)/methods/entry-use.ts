import type { Settings } from '../../../lib/cohort/settings';
import type { Catalogue } from '../../../lib/measures/catalogue';
import type { MethodChoice } from '../../../lib/workspace/method-choices';
import { offeredCutOffs, offeredReferences } from '../../../lib/workspace/offered-methods';
import { formulaUse } from './formula-use';
import type { MethodEntry } from './method-entries';

/** How an entry is used in the open clinic. */
export type EntryUse = 'inForce' | 'switchedOn' | 'followed' | 'offered' | 'no';

/** Whether a clinic computes with an entry, follows it, or only could. */
export const entryUse = (
  entry: MethodEntry,
  catalogue: Catalogue,
  choices: readonly MethodChoice[],
  settings: Settings,
): EntryUse => {
  switch (entry.kind) {
    case 'value':
      return catalogue.follows(entry.measureId) ? 'followed' : 'no';
    case 'formula':
      return formulaUse(entry.formula, choices).kind === 'calculator' ? 'no' : 'inForce';
    case 'equation':
      if (choices.some(({ chosen }) => chosen?.id === entry.equation.id)) return 'inForce';
      return settings.methods.switchedOn.includes(entry.equation.id) ? 'switchedOn' : 'no';
    case 'reference':
      if (entry.reference.kind === 'own-cohort') return 'inForce';
      return offeredReferences(settings).some(({ id }) => id === entry.reference.id) ? 'offered' : 'no';
    case 'cut-off':
      return offeredCutOffs(settings).some(({ id }) => id === entry.cutOff.id) ? 'offered' : 'no';
  }
};
