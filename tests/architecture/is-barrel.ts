import { withoutComments } from './without-comments';

const reExport = /^(export\s+(type\s+)?(\*(\s+as\s+\w+)?|\{[^}]*\})\s+from|import\s)/;

/** Whether a module does nothing but pass on what other modules export. */
export const isBarrel = (source: string): boolean => {
  const statements = withoutComments(source)
    .split(';')
    .map((statement) => statement.trim())
    .filter((statement) => statement !== '');
  return (
    statements.some((statement) => statement.startsWith('export')) &&
    statements.every((statement) => reExport.test(statement) || /^export\s+(type\s+)?\{[^}]*\}$/.test(statement))
  );
};
