import type { Row } from '../engine/types';
import { besideIntention, programIntention } from './intended-direction';
import type { ProgramSettings } from './settings-parts/program-settings';
import type { ProgramRow } from './types/program-row';
import { weightIntention } from './weight-intention';

const JUDGED = [
  ['up', 1],
  ['down', -1],
  ['within', 0],
] as const;

/** What the client's own column says of the weight: nothing, that a change is meant, that none is. */
const OWN_WORDS = [
  ['silent', 'e.weight_change_intended IS NULL', null],
  ['yes', 'e.weight_change_intended = 1', true],
  ['no', 'e.weight_change_intended = 0', false],
] as const;

const COUNTS = OWN_WORDS.flatMap(([own, where, said]) =>
  JUDGED.map(([result, code]) => ({
    name: `own_${own}_${result}`,
    where: `${where} AND r.result_code = ${String(code)}`,
    said,
    result,
  })),
);

/** The CTE text `meant`: pairs with a result per program, by what the client's own column says. Reads `change_rows`. */
export const meantCounts = `meant AS (
  SELECT r.program, ${COUNTS.map(({ name, where }) => `COUNT(*) FILTER (WHERE ${where}) AS ${name}`).join(', ')}
  FROM change_rows AS r JOIN enrolments AS e ON e.enrolment_no = r.enrolment_no GROUP BY r.program
)`;

export const MEANT_COLUMNS: readonly string[] = COUNTS.map(({ name }) => name);

/**
 * Of a program's pairs with a result and an intention, how many went as meant: the client's own column goes before the
 * program's settings. Null where nothing is meant for the value.
 */
export const asMeantOf = (
  row: Row,
  measure: string,
  { programs, lean }: { readonly programs: readonly ProgramSettings[]; readonly lean: string },
): ProgramRow['asMeant'] => {
  const program = programs.find(({ name }) => name === row['program']);
  const ofProgram = programIntention(program, measure, lean);
  const judged = COUNTS.map(({ name, said, result }) => ({
    n: Number(row[name] ?? 0),
    beside: besideIntention(
      result,
      measure === 'weight' ? weightIntention(program?.intended.weight ?? null, said) : ofProgram,
    ),
  }));
  const sum = (parts: typeof judged): number => parts.reduce((total, { n }) => total + n, 0);
  const of = sum(judged.filter(({ beside }) => beside !== null));
  return of === 0 && ofProgram === null ? null : { n: sum(judged.filter(({ beside }) => beside === 'as-meant')), of };
};
