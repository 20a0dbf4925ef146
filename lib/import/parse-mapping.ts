import type { AppError } from '../core/app-error';
import { mappingErrors as words } from '../core/messages/en/mapping-errors';
import { err, ok, type Result } from '../core/result';
import { COLUMN_BY_NAME } from './columns';
import { mappingSchema, type ColumnMapping, type Mapping } from './mapping';
import { acceptedUnits } from './units';

const failure = (code: string, message: string): AppError => ({ code, message, remedy: words.remedy });

const placeText = (path: readonly PropertyKey[]): string =>
  path.length === 0
    ? 'its beginning'
    : path
        .map((part) => (typeof part === 'number' ? `[${String(part)}]` : `.${String(part)}`))
        .join('')
        .replace(/^\./, '');

const wordsOf = (to: string): readonly string[] | undefined => {
  const column = COLUMN_BY_NAME.get(to);
  return column?.type === 'flag' ? ['y', 'n'] : column?.choices;
};

const columnFailure = (mapped: ColumnMapping, place: string, columns: number): string | undefined => {
  const column = COLUMN_BY_NAME.get(mapped.to);
  if (column === undefined) return words.unknownColumn(`${place}.to`, mapped.to);
  const outside = mapped.from.findIndex((from) => from >= columns);
  if (outside >= 0) return words.noSuchPlace(`${place}.from[${String(outside)}]`, mapped.from[outside] ?? 0, columns);
  if (mapped.unit !== undefined && !acceptedUnits(column).includes(mapped.unit)) {
    return words.unitNotTaken(`${place}.unit`, mapped.to, mapped.unit);
  }
  const choices = wordsOf(mapped.to);
  const wrong = Object.entries(mapped.words ?? {}).find(([, to]) => to !== '' && choices?.includes(to) === false);
  return wrong === undefined ? undefined : words.wordNotTaken(`${place}.words.${wrong[0]}`, mapped.to, wrong[1]);
};

const filledTwice = (mapping: Mapping): string | undefined => {
  const keys = mapping.columns.map(({ to, reading }) => `${to} ${String(reading ?? '')}`);
  const twice = keys.findIndex((key, index) => keys.indexOf(key) !== index);
  const [to = ''] = (keys[twice] ?? '').split(' ');
  return twice < 0 ? undefined : words.filledTwice(`columns[${String(twice)}].to`, to);
};

const constantFailure = ({ constants }: Mapping): string | undefined => {
  const place = constants.findIndex(({ to }) => !COLUMN_BY_NAME.has(to));
  return place < 0 ? undefined : words.unknownColumn(`constants[${String(place)}].to`, constants[place]?.to ?? '');
};

const checked = (mapping: Mapping): string | undefined =>
  mapping.columns
    .map((mapped, index) => columnFailure(mapped, `columns[${String(index)}]`, mapping.header.length))
    .find((found) => found !== undefined) ??
  filledTwice(mapping) ??
  constantFailure(mapping);

const parseJson = (text: string): { readonly value: unknown } | undefined => {
  try {
    return { value: JSON.parse(text.replace(/^\uFEFF/, '')) as unknown };
  } catch {
    return undefined;
  }
};

/** A mapping from its exported JSON. Fails with `mapping_not_json`, `mapping_shape` or `mapping_content`, naming the place. */
export const parseMapping = (text: string): Result<Mapping, AppError> => {
  const json = parseJson(text);
  if (json === undefined) return err(failure('mapping_not_json', words.notJson));
  const parsed = mappingSchema.safeParse(json.value);
  if (!parsed.success) {
    const [issue] = parsed.error.issues;
    return err(failure('mapping_shape', words.wrongShape(placeText(issue?.path ?? []), issue?.message ?? '')));
  }
  const wrong = checked(parsed.data);
  return wrong === undefined ? ok(parsed.data) : err(failure('mapping_content', wrong));
};

/** A mapping as JSON for a file. */
export const mappingText = (mapping: Mapping): string => `${JSON.stringify(mapping, null, 2)}\n`;
