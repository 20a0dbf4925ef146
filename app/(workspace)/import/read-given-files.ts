import type { AppError } from '../../../lib/core/app-error';
import { err, ok, type Result } from '../../../lib/core/result';
import type { importScreen } from '../../../lib/core/messages/en/import';
import type { GivenFile } from '../../../lib/workspace/session';

type Words = ReturnType<typeof importScreen>;

/** The bytes of the files a person gave. Fails with `unreadable` where the disk does not give one up. */
export const readGivenFiles = async (
  files: readonly File[],
  words: Words,
): Promise<Result<readonly GivenFile[], AppError>> => {
  const given: GivenFile[] = [];
  for (const file of files) {
    try {
      given.push({ name: file.name, bytes: new Uint8Array(await file.arrayBuffer()) });
    } catch {
      return err({
        code: 'unreadable',
        message: words.error.unreadable({ name: file.name }),
        remedy: words.error.unreadableRemedy,
      });
    }
  }
  return ok(given);
};
