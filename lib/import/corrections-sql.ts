/**
 * Texts that lay the clinic's corrections of some columns over `<prefix>chunk`, each cell noted in `<prefix>found` as the
 * file has it; an empty correction makes the cell unknown.
 *
 * @param columns names from the column catalogue
 */
export const correctionStatements = (prefix: string, columns: readonly string[]): readonly string[] =>
  columns.flatMap((name) => {
    const matched = `c.file_no = k.file_no AND c.line_no = k.line_no AND c.part_no = k.part_no AND k.column_name = '${name}'`;
    return [
      `INSERT INTO ${prefix}found
SELECT c.file_no, c.line_no, c.part_no, c.client_id, c.visit_date, 'changed', 'corrected', '${name}', COALESCE(c.${name}, ''), k.cell
FROM ${prefix}chunk AS c JOIN ${prefix}corrections AS k ON ${matched}`,
      `UPDATE ${prefix}chunk AS c SET ${name} = NULLIF(TRIM(k.cell), '') FROM ${prefix}corrections AS k WHERE ${matched}`,
    ];
  });
