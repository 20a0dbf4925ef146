import { referenceErrors as words } from '../core/messages/en/reference-errors';
import { err, ok, type Result } from '../core/result';

/** What the lines above the header say; texts as they were written, each with its line. */
export interface ReferenceComments {
  readonly said: ReadonlyMap<string, string>;
  readonly cautions: readonly string[];
}

/** A line that cannot be used, and why. */
export interface CommentFailure {
  readonly line: number;
  readonly found: string;
}

const KEYS: ReadonlySet<string> = new Set([
  ...['name', 'label', 'population', 'version', 'n', 'method', 'frequency_khz', 'posture', 'electrode_path'],
  ...['authors', 'title', 'journal', 'publisher', 'year', 'volume', 'issue', 'pages', 'doi', 'url'],
]);

/** A spreadsheet program puts quotation marks around such a line and empty cells behind it. */
const bare = (line: string): string => {
  const cut = line.trim().replace(/[,;\t|]+$/, '');
  return cut.startsWith('"') ? cut.slice(1).replace(/"$/, '').replaceAll('""', '"') : cut;
};

/** Whether a line is one of those that stand above the header. */
export const isReferenceComment = (line: string): boolean => /^"?#/.test(line.trim());

/** Reads `# key: value`; a line that begins with # and has no colon is a remark. `caution` may be there more than once. */
export const readReferenceComments = (lines: readonly string[]): Result<ReferenceComments, CommentFailure> => {
  const said = new Map<string, string>();
  const cautions: string[] = [];
  for (const [place, line] of lines.entries()) {
    const [, key = '', value = ''] = /^#\s*([A-Za-z_]+)\s*:\s*(.*)$/.exec(bare(line)) ?? [];
    const plain = key.toLowerCase();
    if (plain === '' || value.trim() === '') continue;
    if (plain === 'caution') cautions.push(value.trim());
    else if (KEYS.has(plain)) said.set(plain, value.trim());
    else return err({ line: place + 1, found: words.unknownComment(key) });
  }
  return ok({ said, cautions });
};
