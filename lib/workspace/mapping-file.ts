import type { AppError } from '../core/app-error';
import { err, ok, type Result } from '../core/result';
import { mappingFileErrors } from '../core/messages/en/mapping-file-errors';
import { COLUMN_BY_NAME } from '../import/columns';
import { mappingSchema, type Mapping } from '../import/mapping';
import type { MadeFile } from './table-file';

/** A mapping as a file: how the columns of one header become the canonical ones. It holds no row of anybody. */
export const mappingFile = (mapping: Mapping): MadeFile => ({
  name: 'driftline-mapping.json',
  mediaType: 'application/json',
  text: `${JSON.stringify(mapping, null, 2)}\n`,
});

const fail = (code: string, message: string, remedy: string): Result<never, AppError> => err({ code, message, remedy });

const parsedJson = (text: string): unknown => {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
};

/**
 * A mapping out of the text of its file, for a table with this header. The names of the header have to be the same; their
 * order may differ. Fails with `mapping-unreadable` or `mapping-of-another-header`.
 */
export const readMappingFile = (name: string, text: string, header: readonly string[]): Result<Mapping, AppError> => {
  const parsed = mappingSchema.safeParse(parsedJson(text.replace(/^\uFEFF/, '')));
  if (!parsed.success)
    return fail('mapping-unreadable', mappingFileErrors.unreadable(name), mappingFileErrors.unreadableRemedy);
  const mapping = parsed.data;
  const unknown = [...mapping.columns, ...mapping.constants].find(({ to }) => !COLUMN_BY_NAME.has(to));
  if (unknown !== undefined)
    return fail(
      'mapping-unreadable',
      mappingFileErrors.unknownTarget(name, unknown.to),
      mappingFileErrors.unreadableRemedy,
    );
  const places = placesIn(mapping.header, header);
  if (places === undefined)
    return fail('mapping-of-another-header', mappingFileErrors.otherHeader(name), mappingFileErrors.otherHeaderRemedy);
  return ok({
    ...mapping,
    header: [...header],
    columns: mapping.columns.map((column) => ({ ...column, from: column.from.map((place) => places[place] ?? place) })),
  });
};

/** Where each cell of a header stands in another one with the same names; undefined where the names differ. */
const placesIn = (from: readonly string[], to: readonly string[]): readonly number[] | undefined => {
  if (from.length !== to.length) return undefined;
  const free = new Map<string, number[]>();
  to.forEach((cell, place) => {
    const key = cell.trim();
    free.set(key, [...(free.get(key) ?? []), place]);
  });
  const places: number[] = [];
  for (const cell of from) {
    const place = free.get(cell.trim())?.shift();
    if (place === undefined) return undefined;
    places.push(place);
  }
  return places;
};
