import { zipSync } from 'fflate';

/** A zip of a few small files, by their names. */
export const zipOf = async (files: Readonly<Record<string, Blob>>): Promise<Blob> => {
  const bytes: Record<string, Uint8Array> = {};
  for (const [name, blob] of Object.entries(files)) bytes[name] = new Uint8Array(await blob.arrayBuffer());
  return new Blob([zipSync(bytes, { level: 6 })], { type: 'application/zip' });
};
