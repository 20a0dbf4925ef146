import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';

/** SHA-256 (FIPS 180-4) of a file's bytes, in lower-case hexadecimal. */
export const fileSha256 = (path: string): string => createHash('sha256').update(readFileSync(path)).digest('hex');
