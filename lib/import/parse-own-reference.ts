import type { AppError } from '../core/app-error';
import { referenceErrors as words } from '../core/messages/en/reference-errors';
import { err, ok, type Result } from '../core/result';
import { ownReferenceSchema } from '../measures/references/own-reference';
import type { ReferenceSet } from '../measures/references/reference-set';
import { isReferenceComment, readReferenceComments, type ReferenceComments } from './own-reference-comments';
import { columnOfPlace, readReferenceLines, type OwnReferenceKind } from './own-reference-csv';

/** Characters: thousands of strata. */
const LARGEST = 500_000;

const failure = (code: string, message: string, remedy: string): AppError => ({ code, message, remedy });

const placeText = (path: readonly PropertyKey[]): string =>
  path
    .map((part) => (typeof part === 'number' ? `[${String(part)}]` : `.${String(part)}`))
    .join('')
    .replace(/^\./, '');

const slug = (text: string): string =>
  text
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[\u0300-\u036F]/g, '')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '') || 'reference';

const fromJson = (name: string, text: string): Result<ReferenceSet, AppError> => {
  let given: unknown;
  try {
    given = JSON.parse(text);
  } catch {
    return err(failure('reference_not_json', words.notJson(name), words.remedyJson));
  }
  const parsed = ownReferenceSchema.safeParse(given);
  if (parsed.success) return ok(parsed.data);
  const [{ path, message } = { path: [], message: '' }] = parsed.error.issues;
  return path[0] === 'citation'
    ? err(failure('reference_citation', words.atPlace(name, placeText(path), message), words.remedyCitation))
    : err(failure('reference_shape', words.atPlace(name, placeText(path), message), words.remedyJson));
};

const numbered = (value: string | undefined): number | undefined => (value === undefined ? undefined : Number(value));

const citationOf = ({ said }: ReferenceComments) => {
  const authors = said.get('authors') ?? '';
  const people = authors
    .split(authors.includes(';') ? ';' : ',')
    .map((person) => person.trim())
    .filter((person) => person !== '');
  const rest = ['title', 'journal', 'publisher', 'volume', 'issue', 'pages', 'doi', 'url'];
  return {
    id: `${slug(people[0] ?? '')}-${said.get('year') ?? ''}`,
    authors: people,
    year: numbered(said.get('year')),
    ...Object.fromEntries(rest.flatMap((key) => (said.has(key) ? [[key, said.get(key)]] : []))),
  };
};

/** The head of a set from the lines above the header; a text instead says what is wrong there. */
const headOf = (file: string, kind: OwnReferenceKind, comments: ReferenceComments): object | string => {
  const { said, cautions } = comments;
  const method = (said.get('method') ?? (kind === 'indices' ? '' : 'bia')).toLowerCase();
  const posture = said.get('posture')?.toLowerCase() ?? null;
  if (method === '') return words.noMethod;
  if (method !== 'dxa' && method !== 'bia') return words.unknownMethod(method);
  if (posture !== null && posture !== 'lying' && posture !== 'standing') return words.unknownPosture(posture);
  if (!said.has('population')) return words.noPopulation;
  const name = said.get('name') ?? file.replace(/\.[^.]*$/, '');
  const frequency = numbered(said.get('frequency_khz'));
  return {
    id: `own-${slug(name)}`,
    name,
    version: numbered(said.get('version')) ?? 1,
    label: said.get('label') ?? words.entered,
    population: said.get('population'),
    ...(said.has('n') ? { n: numbered(said.get('n')) } : {}),
    method: {
      kind: method,
      frequencyKhz: frequency ?? null,
      posture,
      electrodePath: said.get('electrode_path')?.toLowerCase() ?? null,
    },
    citation: citationOf(comments),
    verification: 'entered-by-clinic',
    verificationNote: words.enteredNote,
    cautions,
  };
};

const fromCsv = (name: string, text: string): Result<ReferenceSet, AppError> => {
  const lines = text.split(/\r\n?|\n/);
  const header = lines.findIndex((line) => line.trim() !== '' && !isReferenceComment(line));
  const comments = readReferenceComments(lines.slice(0, Math.max(header, 0)));
  if (!comments.ok)
    return err(
      failure('reference_comment', words.atLine(name, comments.error.line, comments.error.found), words.remedyComment),
    );
  const table = readReferenceLines(text);
  if (!table.ok) {
    const { line, column, found, inHeader } = table.error;
    return err(
      inHeader
        ? failure('reference_header', words.atCell(name, line, column, found), words.remedyHeader)
        : failure('reference_cell', words.atCell(name, line, column, found), words.remedyCell),
    );
  }
  const { kind, strata } = table.value;
  const head = headOf(name, kind, comments.value);
  if (typeof head === 'string')
    return err(failure('reference_comment', words.atPlace(name, '#', head), words.remedyComment));
  const parsed = ownReferenceSchema.safeParse({ kind, ...head, strata });
  if (parsed.success) return ok(parsed.data);
  const [{ path, message } = { path: [], message: '' }] = parsed.error.issues;
  const [top, place, ...inner] = path;
  const line = typeof place === 'number' ? table.value.lines[place] : undefined;
  if (top === 'strata' && line !== undefined) {
    const column = columnOfPlace(kind, placeText(inner));
    return err(failure('reference_cell', words.atCell(name, line, column, message), words.remedyCell));
  }
  return top === 'citation'
    ? err(failure('reference_citation', words.atPlace(name, '#', words.noCitation), words.remedyCitation))
    : err(failure('reference_comment', words.atPlace(name, `# ${placeText(path)}`, message), words.remedyComment));
};

/**
 * A clinic's own reference population from a file's text: JSON as `referenceToJson` writes it, or CSV with one line for
 * each sex and age band. Columns of the CSV: kind (vector, indices, phase-angle), sex, age_from, age_below (empty: open), n,
 * and those of the kind: mean_r_h, sd_r_h, mean_xc_h, sd_xc_h (Ω/m), r; mean_fmi, sd_fmi, mean_ffmi, sd_ffmi (kg/m²),
 * r_fmi_ffmi; mean_phase_angle, sd_phase_angle (degrees). Lines `# key: value` above the header say name, population,
 * method, posture, electrode_path, frequency_khz, authors, year, journal, volume, pages, doi, caution and so on.
 *
 * Fails with `reference_too_large`, `reference_encoding`, `reference_empty`, `reference_not_json`, `reference_shape`, `reference_header`, `reference_cell`,
 * `reference_comment` or `reference_citation`; the message names the file, the line and column or the place in the JSON.
 */
export const parseOwnReference = (name: string, text: string): Result<ReferenceSet, AppError> => {
  if (text.length > LARGEST) return err(failure('reference_too_large', words.tooLarge(name), words.remedyTooLarge));
  if (text.includes('\uFFFD'))
    return err(failure('reference_encoding', words.notUnicode(name), words.remedyNotUnicode));
  const plain = text.replace(/^\uFEFF/, '');
  if (plain.trim() === '') return err(failure('reference_empty', words.empty(name), words.remedyEmpty));
  return /^\s*[[{]/.test(plain) ? fromJson(name, plain) : fromCsv(name, plain);
};
