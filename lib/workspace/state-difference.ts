import { sameValue } from '../core/same-value';
import type { ClinicState } from './clinic-state';

const LISTS = ['imports', 'corrections', 'setAside', 'notes', 'marks'] as const;

const changedItems = (from: readonly { readonly id: string }[], to: readonly { readonly id: string }[]): number => {
  const [before, after] = [from, to].map((items) => new Map(items.map((item) => [item.id, item])));
  const ids = new Set([...(before?.keys() ?? []), ...(after?.keys() ?? [])]);
  return [...ids].filter((id) => !sameValue(before?.get(id), after?.get(id))).length;
};

/** How many things of each kind stand differently in two states: added, changed or taken out. Kinds without any are left out. */
export const stateDifference = (from: ClinicState, to: ClinicState): Readonly<Record<string, number>> => {
  const keys = new Set([...Object.keys(from.settings), ...Object.keys(to.settings)]) as ReadonlySet<
    keyof ClinicState['settings']
  >;
  const counts: readonly (readonly [string, number])[] = [
    ['settings', [...keys].filter((key) => !sameValue(from.settings[key], to.settings[key])).length],
    ...LISTS.map((list): readonly [string, number] => [list, changedItems(from[list], to[list])]),
    ['retention', from.retentionMonths === to.retentionMonths ? 0 : 1],
  ];
  return Object.fromEntries(counts.filter(([, count]) => count > 0));
};
