import { MAPPING_TARGETS } from '../../../lib/workspace/mapping-targets';

/** What is corrected most: shown first. */
const FIRST = ['weight_kg', 'height_cm', 'r_ohm', 'xc_ohm', 'visit_date', 'electrode_position'];

/** Whose reading it is decides which page it stands on: that is an answer about people, not a correction of a cell. */
const NEVER: ReadonlySet<string> = new Set(['client_id', 'corrects_row']);

const place = (name: string): number => {
  const found = FIRST.indexOf(name);
  return found === -1 ? FIRST.length : found;
};

/** The columns of a reading that can be corrected, in words with what stands there now. */
export const correctableColumns = (
  cells: Readonly<Record<string, string>>,
  names: Readonly<Record<string, string>>,
): readonly { readonly value: string; readonly label: string }[] =>
  MAPPING_TARGETS.filter(({ name }) => !NEVER.has(name))
    .map(({ name }, index) => ({ name, order: place(name) * 1000 + index }))
    .sort((one, other) => one.order - other.order)
    .map(({ name }) => {
      const title = names[name] ?? name;
      const now = cells[name] ?? '';
      return { value: name, label: now === '' ? title : `${title}: ${now}` };
    });
