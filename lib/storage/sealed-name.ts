const SHA256 = /^[0-9a-f]{64}$/;
const SEALED = /^([0-9a-f]{64})\.([0-9A-Za-z_-]+)\.age$/;

/** Whether a name is the SHA-256 of the bytes that are kept under it. */
export const isPlainName = (name: string): boolean => SHA256.test(name);

/** The name under which a sealed clinic keeps a file; the SHA-256 is that of the bytes before sealing. */
export const sealedName = (sha256: string, clinicId: string): string => `${sha256}.${clinicId}.age`;

/** What a sealed name says; undefined for any other name. */
export const readSealedName = (name: string): { readonly sha256: string; readonly clinicId: string } | undefined => {
  const [, sha256, clinicId] = SEALED.exec(name) ?? [];
  return sha256 === undefined || clinicId === undefined ? undefined : { sha256, clinicId };
};
