import { mergeWords } from '../core/messages/en/merge-words';

/** Parts of a kept item that tell a person nothing about what it says. */
const SILENT: ReadonlySet<string> = new Set(['id', 'row', 'header', 'sha256', 'version']);

/** A value of a clinic's state as words, for someone who has to choose between two of them. */
export const conflictWords = (value: unknown): string => {
  if (value === undefined || value === null) return mergeWords.notThere;
  if (typeof value === 'boolean') return value ? mergeWords.yes : mergeWords.no;
  if (typeof value === 'string') return value === '' ? mergeWords.empty : value;
  if (typeof value === 'number') return String(value);
  if (Array.isArray(value)) return value.length === 0 ? mergeWords.empty : value.map(conflictWords).join('; ');
  if (typeof value !== 'object') return '';
  return Object.entries(value)
    .filter(([key]) => !SILENT.has(key))
    .map(([key, part]) => `${key}: ${conflictWords(part)}`)
    .join(', ');
};
