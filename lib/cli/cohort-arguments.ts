import { parseArgs } from 'node:util';
import { parseIsoDate, type IsoDate } from '../core/iso-date';
import { err, ok, type Result } from '../core/result';

/** What was asked for, checked. */
export interface CohortArguments {
  readonly files: readonly string[];
  readonly settings: string | undefined;
  /** Files with mappings that were decided before. */
  readonly mappings: readonly string[];
  readonly asOf: IsoDate | undefined;
  readonly today: IsoDate | undefined;
  readonly measures: readonly string[] | undefined;
  readonly level: 80 | 90 | 95 | undefined;
  readonly comparable: 'strict' | 'caution' | 'all' | undefined;
  /** Which visit of a planned review's window is compared: the closest, or a sensitivity. */
  readonly reviewVisit: 'closest' | 'closest-comparable' | 'first-in-window' | undefined;
  readonly acceptQuestions: boolean;
}

export const USAGE = `Usage: npm run --silent cohort -- FILE... [--mapping FILE.json]... [--settings FILE.json]
       [--as-of YYYY-MM-DD] [--today YYYY-MM-DD] [--measure ID[,ID]] [--level 80|90|95]
       [--comparable strict|caution|all] [--questions hold|accept]
       [--review-visit closest|closest-comparable|first-in-window]
FILE is a visit export or an enrolment table: CSV in any dialect, XLSX, Parquet, XPORT, FHIR, or a zip of these; or a folder
of such files, hidden ones left out. A mapping says how the columns of one header are read; the Import screen saves it.`;

const oneOf = <T extends string>(value: string | undefined, allowed: readonly T[], name: string): T | undefined => {
  if (value === undefined) return undefined;
  const found = allowed.find((candidate) => candidate === value);
  if (found === undefined) throw new Error(`${name} takes one of ${allowed.join(', ')}, not “${value}”`);
  return found;
};

const date = (value: string | undefined, name: string): IsoDate | undefined => {
  if (value === undefined) return undefined;
  const parsed = parseIsoDate(value);
  if (parsed === undefined) throw new Error(`${name} takes a date YYYY-MM-DD, not “${value}”`);
  return parsed;
};

/** Reads the call; the error is a sentence for the person who called. */
export const cohortArguments = (argv: readonly string[]): Result<CohortArguments, string> => {
  try {
    const { values, positionals } = parseArgs({
      args: [...argv],
      allowPositionals: true,
      strict: true,
      options: {
        settings: { type: 'string' },
        mapping: { type: 'string', multiple: true },
        'as-of': { type: 'string' },
        today: { type: 'string' },
        measure: { type: 'string', multiple: true },
        level: { type: 'string' },
        comparable: { type: 'string' },
        questions: { type: 'string' },
        'review-visit': { type: 'string' },
      },
    });
    if (positionals.length === 0) return err('no file was named');
    const level = oneOf(values.level, ['80', '90', '95'], '--level');
    return ok({
      files: positionals,
      settings: values.settings,
      mappings: values.mapping ?? [],
      asOf: date(values['as-of'], '--as-of'),
      today: date(values.today, '--today'),
      measures: values.measure?.flatMap((text) => text.split(',')),
      level: level === undefined ? undefined : (Number(level) as 80 | 90 | 95),
      comparable: oneOf(values.comparable, ['strict', 'caution', 'all'], '--comparable'),
      reviewVisit: oneOf(
        values['review-visit'],
        ['closest', 'closest-comparable', 'first-in-window'],
        '--review-visit',
      ),
      acceptQuestions: oneOf(values.questions, ['hold', 'accept'], '--questions') === 'accept',
    });
  } catch (error) {
    return err(error instanceof Error ? error.message : String(error));
  }
};
