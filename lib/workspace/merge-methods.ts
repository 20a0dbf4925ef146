import type { Settings } from '../cohort/settings';
import { mergeList, mergeValue, type MergeWork } from './three-way';

type Methods = Settings['methods'];
type Switches = Methods['references'];

const itself = (id: string): string => id;

/** Every version of an equation or a reference is an item of its own. */
const versionOf = ({ id, version }: { readonly id: string; readonly version: number }): string =>
  `${id} ${String(version)}`;

const mergeSwitches = (work: MergeWork, path: string, base: Switches, mine: Switches, theirs: Switches): Switches => ({
  on: mergeList(work, { path, keyOf: itself }, base.on, mine.on, theirs.on),
  off: mergeList(work, { path, keyOf: itself }, base.off, mine.off, theirs.off),
});

const mergeEquations = (
  work: MergeWork,
  base: Methods['equations'],
  mine: Methods['equations'],
  theirs: Methods['equations'],
): Methods['equations'] => {
  const chosen = <Quantity extends keyof Methods['equations']>(quantity: Quantity): Methods['equations'][Quantity] =>
    mergeValue(work, `settings.methods.equations.${quantity}`, base[quantity], mine[quantity], theirs[quantity]);
  return {
    ffm: chosen('ffm'),
    smm: chosen('smm'),
    asm: chosen('asm'),
    tbw: chosen('tbw'),
    ecw: chosen('ecw'),
    ree: chosen('ree'),
  };
};

/** Methods out of three: quantity by quantity, switch by switch, a clinic's own equations and references by id and version. */
export const mergeMethods = (work: MergeWork, base: Methods, mine: Methods, theirs: Methods): Methods => {
  const path = (part: string): string => `settings.methods.${part}`;
  const of = <Key extends keyof Methods>(key: Key) => [base[key], mine[key], theirs[key]] as const;
  return {
    equations: mergeEquations(work, ...of('equations')),
    switchedOn: mergeList(work, { path: path('switchedOn'), keyOf: itself }, ...of('switchedOn')),
    geometryCorrected: mergeValue(work, path('geometryCorrected'), ...of('geometryCorrected')),
    ownEquations: mergeList(work, { path: path('ownEquations'), keyOf: versionOf }, ...of('ownEquations')),
    references: mergeSwitches(work, path('references'), ...of('references')),
    ownReferences: mergeList(work, { path: path('ownReferences'), keyOf: versionOf }, ...of('ownReferences')),
    cutOffs: mergeSwitches(work, path('cutOffs'), ...of('cutOffs')),
  };
};
