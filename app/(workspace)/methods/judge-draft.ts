import type { Equation } from '../../../lib/measures/equation';
import { ownEquationSchema } from '../../../lib/measures/own-equation';
import { typedNumber } from './calculator';
import type { BranchDraft, OwnDraft, OwnField } from './own-draft';

const optional = (name: string, text: string): Readonly<Record<string, number>> => {
  const value = typedNumber(text);
  return value === undefined ? {} : { [name]: value };
};

const range = (name: string, from: string, to: string): Readonly<Record<string, readonly (number | undefined)[]>> => {
  const ends = [typedNumber(from), typedNumber(to)] as const;
  return ends[0] === undefined && ends[1] === undefined ? {} : { [name]: ends };
};

const text = (name: string, value: string): Readonly<Record<string, string>> =>
  value.trim() === '' ? {} : { [name]: value.trim() };

const idFrom = (name: string): string =>
  `own-${name
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')}`;

const freeId = (wanted: string, taken: readonly string[]): string => {
  if (!taken.includes(wanted)) return wanted;
  let place = 2;
  while (taken.includes(`${wanted}-${String(place)}`)) place += 1;
  return `${wanted}-${String(place)}`;
};

const branchFrom = ({ intercept, terms }: BranchDraft, sex?: 'F' | 'M') => ({
  ...(sex === undefined ? {} : { sex }),
  intercept: intercept.trim() === '' ? 0 : typedNumber(intercept),
  terms: terms.map(({ coefficient, regressor }) => ({ coefficient: typedNumber(coefficient), regressor })),
});

/** The equation that was typed, as the schema is to judge it; `taken` are the ids of the clinic's other equations. */
const candidateFrom = (draft: OwnDraft, taken: readonly string[], note: string): unknown => {
  const id = draft.id ?? freeId(idFrom(draft.name), taken);
  const path = draft.path.trim();
  return {
    id,
    name: draft.name.trim(),
    quantity: draft.quantity,
    unit: draft.unit,
    version: draft.keptVersion + 1,
    branches: draft.form === 'one' ? [branchFrom(draft.all)] : [branchFrom(draft.F, 'F'), branchFrom(draft.M, 'M')],
    sexCoding: draft.sexCoding === 'men' ? { M: 1, F: 0 } : { M: 0, F: 1 },
    population: {
      description: draft.description.trim(),
      ...optional('n', draft.n),
      ...range('ageYears', draft.ageFrom, draft.ageTo),
      ...range('bmi', draft.bmiFrom, draft.bmiTo),
      ...(draft.sex === 'both' ? {} : { sex: draft.sex }),
    },
    posture: draft.posture === 'none' ? null : draft.posture,
    electrodePath: path === '' ? null : path,
    frequencyKhz: typedNumber(draft.frequency) ?? null,
    referenceMethod: draft.referenceMethod.trim(),
    fit: optional('see', draft.see),
    citation: {
      id,
      authors: draft.authors
        .split(',')
        .map((author) => author.trim())
        .filter((author) => author !== ''),
      ...text('title', draft.title),
      ...text('journal', draft.journal),
      year: typedNumber(draft.year),
      ...text('doi', draft.doi),
    },
    verification: 'entered-by-clinic',
    verificationNote: note,
    cautions: [],
  };
};

const FIELD_BY_PATH: readonly (readonly [RegExp, OwnField])[] = [
  [/^(id|name)$/, 'name'],
  [/^branches\.\d+\.terms\.\d+\.coefficient$/, 'coefficient'],
  [/^branches\.\d+\.intercept$/, 'intercept'],
  [/^branches/, 'terms'],
  [/^population\.n$/, 'n'],
  [/^population\.ageYears/, 'ages'],
  [/^population\.bmi/, 'bmi'],
  [/^population/, 'description'],
  [/^electrodePath$/, 'path'],
  [/^frequencyKhz$/, 'frequency'],
  [/^referenceMethod$/, 'referenceMethod'],
  [/^fit/, 'see'],
  [/^citation\.year$/, 'year'],
  [/^citation$/, 'journal'],
  [/^citation/, 'authors'],
];

/** A draft judged: the equation, or the fields that are not complete. */
export type Judged =
  | { readonly equation: Equation; readonly problems: ReadonlySet<OwnField> }
  | { readonly equation: undefined; readonly problems: ReadonlySet<OwnField> };

/** Judges a typed equation by the schema that the settings keep. */
export const judgeDraft = (draft: OwnDraft, taken: readonly string[], note: string): Judged => {
  const parsed = ownEquationSchema.safeParse(candidateFrom(draft, taken, note));
  if (parsed.success) return { equation: parsed.data, problems: new Set() };
  const fields = parsed.error.issues.map(({ path }) => {
    const place = path.map(String).join('.');
    return FIELD_BY_PATH.find(([pattern]) => pattern.test(place))?.[1] ?? 'name';
  });
  return { equation: undefined, problems: new Set(fields) };
};

/** What the formula of a draft is so far, with everything else left open; undefined without a whole term. */
export const previewFrom = (draft: OwnDraft, note: string): Equation | undefined =>
  judgeDraft(
    {
      ...draft,
      name: 'preview',
      description: 'preview',
      referenceMethod: 'preview',
      authors: 'preview',
      journal: 'preview',
      year: '2000',
      n: '',
      ageFrom: '',
      ageTo: '',
      bmiFrom: '',
      bmiTo: '',
      path: '',
      frequency: '',
      see: '',
    },
    [],
    note,
  ).equation;
