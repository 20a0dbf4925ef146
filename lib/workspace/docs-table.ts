/** A table in Markdown, its cells padded as Prettier pads them, so that a generated page stays formatted. */
export const docsTable = (header: readonly string[], rows: readonly (readonly string[])[]): string => {
  const cells = [header, ...rows].map((row) => row.map((cell) => cell.replaceAll('|', '\\|').replaceAll('\n', ' ')));
  const widths = header.map((_, column) => Math.max(3, ...cells.map((row) => [...(row[column] ?? '')].length)));
  const line = (row: readonly string[]): string =>
    `| ${widths.map((width, column) => (row[column] ?? '') + ' '.repeat(width - [...(row[column] ?? '')].length)).join(' | ')} |`;
  const [head = [], ...body] = cells;
  return [line(head), `| ${widths.map((width) => '-'.repeat(width)).join(' | ')} |`, ...body.map(line)].join('\n');
};
