import type { AppError } from '../core/app-error';
import { err, ok, type Result } from '../core/result';
import { mappingFileErrors } from '../core/messages/en/mapping-file-errors';
import type { Mapping } from '../import/mapping';
import { mappingText, parseMapping } from '../import/parse-mapping';
import type { MadeFile } from './table-file';

/** A mapping as a file: how the columns of one header become the canonical ones. It holds no row of anybody. */
export const mappingFile = (mapping: Mapping): MadeFile => ({
  name: 'driftline-mapping.json',
  mediaType: 'application/json',
  text: mappingText(mapping),
});

/** Where each cell of a header stands in another one with the same names; undefined where the names differ. */
const placesIn = (from: readonly string[], to: readonly string[]): readonly number[] | undefined => {
  if (from.length !== to.length) return undefined;
  const free = new Map<string, number[]>();
  to.forEach((cell, place) => {
    const name = cell.trim();
    free.set(name, [...(free.get(name) ?? []), place]);
  });
  const places = from.map((cell) => free.get(cell.trim())?.shift());
  return places.includes(undefined) ? undefined : places.flatMap((place) => place ?? []);
};

/**
 * A mapping out of the text of its file, for a table with this header: the same names, in any order. Fails as
 * `parseMapping` does, or with `mapping_of_another_header`.
 */
export const readMappingFile = (name: string, text: string, header: readonly string[]): Result<Mapping, AppError> => {
  const parsed = parseMapping(text);
  if (!parsed.ok) return parsed;
  const mapping = parsed.value;
  const places = placesIn(mapping.header, header);
  if (places === undefined) {
    return err({
      code: 'mapping_of_another_header',
      message: mappingFileErrors.otherHeader(name),
      remedy: mappingFileErrors.otherHeaderRemedy,
    });
  }
  return ok({
    ...mapping,
    header: [...header],
    columns: mapping.columns.map((column) => ({ ...column, from: column.from.map((place) => places[place] ?? place) })),
  });
};

/** The mappings in the texts of files, each with its name; or a sentence on the first that cannot be used. */
export const mappingsFrom = (files: readonly (readonly [string, string])[]): Result<readonly Mapping[], string> => {
  const mappings: Mapping[] = [];
  for (const [name, text] of files) {
    const mapping = parseMapping(text);
    if (!mapping.ok) return err(`${name}: ${mapping.error.message} ${mapping.error.remedy}`);
    mappings.push(mapping.value);
  }
  return ok(mappings);
};
