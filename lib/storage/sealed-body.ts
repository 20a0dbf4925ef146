import { sha256 } from '../core/sha256';
import { err, ok, type Result } from '../core/result';
import type { StoredClinic } from './clinic-store';
import { newClinicKey, openBytes, sealBytes, type ClinicKey, type SealFault } from './seal';

/** What stands in the place of a sealed clinic's body. The digests tell a changed byte from a wrong passphrase. */
export interface SealedBody {
  readonly seal: 1;
  /** The clinic's key, sealed with the passphrase. */
  readonly key: Uint8Array;
  readonly keySha256: string;
  /** The body with the clinic's id and revision, as JSON, sealed with the key. */
  readonly content: Uint8Array;
}

export const isSealedBody = (body: unknown): body is SealedBody =>
  typeof body === 'object' &&
  body !== null &&
  'seal' in body &&
  body.seal === 1 &&
  'key' in body &&
  body.key instanceof Uint8Array &&
  'keySha256' in body &&
  typeof body.keySha256 === 'string' &&
  'content' in body &&
  body.content instanceof Uint8Array;

const utf8 = new TextEncoder();

/** A clinic's key, sealed with a passphrase: it changes with the passphrase alone. */
export type SealedKey = Pick<SealedBody, 'key' | 'keySha256'>;

export const sealKey = async (key: ClinicKey, passphrase: string, workFactor?: number): Promise<SealedKey> => {
  const sealed = await sealBytes(utf8.encode(key), { passphrase }, workFactor);
  return { key: sealed, keySha256: await sha256(sealed) };
};

/** Seals a clinic's body under a key that is sealed already. */
export const sealContent = async (clinic: StoredClinic, key: ClinicKey, sealedKey: SealedKey): Promise<SealedBody> => {
  const { id, revision, body } = clinic;
  const content = await sealBytes(utf8.encode(JSON.stringify({ id, revision, body })), { key });
  return { seal: 1, key: sealedKey.key, keySha256: sealedKey.keySha256, content };
};

/** Seals a clinic's body with a new key under a passphrase. */
export const sealBody = async (
  clinic: StoredClinic,
  passphrase: string,
  workFactor?: number,
): Promise<{ readonly sealed: StoredClinic; readonly key: ClinicKey }> => {
  const key = await newClinicKey();
  const body = await sealContent(clinic, key, await sealKey(key, passphrase, workFactor));
  return { sealed: { ...clinic, sealed: true, body }, key };
};

const readJson = (bytes: Uint8Array): unknown => {
  try {
    return JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch {
    return undefined;
  }
};

/** The clinic's key out of its sealed body. `damaged`: the body was changed since it was sealed. */
export const openKey = async (clinic: StoredClinic, passphrase: string): Promise<Result<ClinicKey, SealFault>> => {
  if (!isSealedBody(clinic.body)) return err('damaged');
  if ((await sha256(clinic.body.key)) !== clinic.body.keySha256) return err('damaged');
  const key = await openBytes(clinic.body.key, { passphrase });
  return key.ok ? ok(new TextDecoder().decode(key.value) as ClinicKey) : key;
};

/** The clinic with its body in the open, by its key. A body that belongs to another clinic or revision is `damaged`. */
export const openContent = async (clinic: StoredClinic, key: ClinicKey): Promise<Result<StoredClinic, 'damaged'>> => {
  if (!isSealedBody(clinic.body)) return err('damaged');
  const content = await openBytes(clinic.body.content, { key });
  const read = content.ok ? readJson(content.value) : undefined;
  if (typeof read !== 'object' || read === null || !('id' in read && 'revision' in read && 'body' in read))
    return err('damaged');
  if (read.id !== clinic.id || read.revision !== clinic.revision) return err('damaged');
  return ok({ ...clinic, body: read.body });
};
