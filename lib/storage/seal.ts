import { Decrypter, Encrypter, generateX25519Identity, identityToRecipient } from 'age-encryption';
import { err, ok, type Result } from '../core/result';

/** Why something sealed does not open. */
export type SealFault = 'wrong_passphrase' | 'damaged';

/**
 * What a clinic is sealed with while it is kept: an age X25519 identity, `AGE-SECRET-KEY-1…`. Whoever has it reads the
 * clinic; it stays in memory alone, and at rest it is sealed with the passphrase.
 */
export type ClinicKey = string & { readonly __brand: 'clinic key' };

/** What opens a sealed file: the passphrase it was sealed with, or a clinic's key. */
export type Opener = { readonly passphrase: string } | { readonly key: ClinicKey };

/**
 * Binary logarithm of scrypt's cost N (r = 8, p = 1). 17 is the least that the OWASP Password Storage Cheat Sheet
 * recommends (N = 2^17, 128 MiB).
 */
export const WORK_FACTOR = 17;

// The same word typed on two machines may come composed or decomposed (Unicode Standard Annex 15).
const composed = (passphrase: string): string => passphrase.normalize('NFKC');

export const newClinicKey = async (): Promise<ClinicKey> => (await generateX25519Identity()) as ClinicKey;

const encrypterFor = async (opener: Opener, workFactor: number): Promise<Encrypter> => {
  const encrypter = new Encrypter();
  if ('key' in opener) encrypter.addRecipient(await identityToRecipient(opener.key));
  else {
    encrypter.setPassphrase(composed(opener.passphrase));
    encrypter.setScryptWorkFactor(workFactor);
  }
  return encrypter;
};

const decrypterFor = (opener: Opener): Decrypter => {
  const decrypter = new Decrypter();
  if ('key' in opener) decrypter.addIdentity(opener.key);
  else decrypter.addPassphrase(composed(opener.passphrase));
  return decrypter;
};

// The package throws plain errors; this is the one it throws when the key that wraps the file's key does not fit.
const faultOf = (error: unknown, opener: Opener): SealFault =>
  'passphrase' in opener && error instanceof Error && error.message.startsWith('no identity matched')
    ? 'wrong_passphrase'
    : 'damaged';

/** Seals bytes as one age file (age-encryption.org/v1: ChaCha20-Poly1305 in pieces of 64 KiB). */
export const sealBytes = async (bytes: Uint8Array, opener: Opener, workFactor = WORK_FACTOR): Promise<Uint8Array> =>
  (await encrypterFor(opener, workFactor)).encrypt(bytes);

/** Opens what `sealBytes` sealed. A changed byte in the part that wraps the key cannot be told from a wrong passphrase. */
export const openBytes = async (sealed: Uint8Array, opener: Opener): Promise<Result<Uint8Array, SealFault>> => {
  try {
    return ok(await decrypterFor(opener).decrypt(sealed));
  } catch (error) {
    return err(faultOf(error, opener));
  }
};

/** Seals a stream; the pieces come out as they go in. */
export const sealStream = async (
  plain: ReadableStream<Uint8Array>,
  opener: Opener,
  workFactor = WORK_FACTOR,
): Promise<ReadableStream<Uint8Array>> => (await encrypterFor(opener, workFactor)).encrypt(plain);

/**
 * Opens a sealed stream. The stream that comes out breaks with an error where a piece was changed, or where it was cut
 * short: nothing of it may be used before its end was reached.
 */
export const openStream = async (
  sealed: ReadableStream<Uint8Array>,
  opener: Opener,
): Promise<Result<ReadableStream<Uint8Array>, SealFault>> => {
  try {
    return ok(await decrypterFor(opener).decrypt(sealed));
  } catch (error) {
    return err(faultOf(error, opener));
  }
};

const HEADER = 'age-encryption.org/v1\n';

/** Whether a file is sealed, by the first line of an age file. */
export const isSealed = async (file: Blob): Promise<boolean> => (await file.slice(0, HEADER.length).text()) === HEADER;
