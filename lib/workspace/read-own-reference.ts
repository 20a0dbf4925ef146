import type { AppError } from '../core/app-error';
import type { Result } from '../core/result';
import { parseOwnReference } from '../import/parse-own-reference';
import type { ReferenceSet } from '../measures/references/reference-set';

/** A clinic's own reference population from a file that a person chose (CSV or JSON); errors as `parseOwnReference`. */
export const readOwnReference = async (file: {
  readonly name: string;
  readonly text: () => Promise<string>;
}): Promise<Result<ReferenceSet, AppError>> => parseOwnReference(file.name, await file.text());
