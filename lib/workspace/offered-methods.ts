import { cutOffsInForce } from '../cohort/cut-offs-in-force';
import type { Settings } from '../cohort/settings';
import { PUBLISHED_REFERENCES } from '../measures/references/published-references';
import { isReferenceInForceByDefault, type ReferenceSet } from '../measures/references/reference-set';

interface Switches {
  readonly on: readonly string[];
  readonly off: readonly string[];
}

const isOn = (id: string, byDefault: boolean, { on, off }: Switches): boolean =>
  byDefault ? !off.includes(id) : on.includes(id);

/** The cut-offs that the clinic offers are those that the contact lists judge by. */
export const offeredCutOffs = cutOffsInForce;

/** The reference populations that the clinic offers: its own, and the published ones by the same rule. */
export const offeredReferences = ({ methods }: Settings): readonly ReferenceSet[] => [
  ...methods.ownReferences,
  ...PUBLISHED_REFERENCES.filter((set) => isOn(set.id, isReferenceInForceByDefault(set), methods.references)),
];

/** The switches with one entry on or off; nothing is noted that is so by default. */
export const switched = (switches: Switches, id: string, byDefault: boolean, wanted: boolean): Switches => {
  const without = (ids: readonly string[]): readonly string[] => ids.filter((one) => one !== id);
  const [on, off] = [without(switches.on), without(switches.off)];
  if (wanted === byDefault) return { on, off };
  return wanted ? { on: [...on, id], off } : { on, off: [...off, id] };
};
