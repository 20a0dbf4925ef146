import { blobBytes } from '../blob-chunks';
import { EndlessLine, textLines } from '../text-lines';
import { DamagedFile, TooLargeFile, type ReadOptions } from '../raw-table';
import { isObject, listAt, textAt, type JsonObject } from './json-object';

/** A JSON text that is not divided into lines is held whole up to this size. */
const LARGEST_JSON = 256 * 1024 * 1024;

/** A resource with the address under which a Bundle lists it ('' outside one). */
export interface FhirResource {
  readonly address: string;
  readonly resource: JsonObject;
}

const parsed = (text: string): unknown => {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
};

const inside = (value: unknown): readonly FhirResource[] => {
  if (Array.isArray(value)) return value.flatMap(inside);
  if (!isObject(value)) throw new DamagedFile('A resource is no JSON object.');
  if (value['resourceType'] !== 'Bundle') return [{ address: '', resource: value }];
  return listAt(value, 'entry').flatMap((entry) => {
    const resource = isObject(entry) ? entry['resource'] : undefined;
    return isObject(resource) ? [{ address: textAt(entry, 'fullUrl'), resource }] : [];
  });
};

/** Whether the first line holds a whole JSON value: then each line does. */
const isInLines = async (blob: Blob, limitBytes: number): Promise<boolean> => {
  try {
    for await (const lines of textLines(blob, { limitBytes })) {
      const first = lines.find((line) => line !== '');
      if (first !== undefined) return parsed(first.replace(/^\uFEFF/, '')) !== undefined;
    }
  } catch (reason) {
    if (!(reason instanceof EndlessLine)) throw reason;
  }
  return false;
};

/**
 * The resources of NDJSON (one a line), of a Bundle, a list or a single resource. NDJSON is read in pieces; other JSON is
 * held whole. Rejects with a `DamagedFile`, or a `TooLargeFile` above the limit for what is held.
 */
export async function* fhirResources(blob: Blob, options: ReadOptions = {}): AsyncGenerator<readonly FhirResource[]> {
  const { limitBytes = LARGEST_JSON } = options;
  if (await isInLines(blob, limitBytes)) {
    for await (const lines of textLines(blob, options))
      yield lines
        .map((line) => line.replace(/^\uFEFF/, ''))
        .filter((line) => line !== '')
        .flatMap((line) => inside(parsed(line)));
    return;
  }
  if (blob.size > limitBytes) throw new TooLargeFile('json', limitBytes);
  const text = new TextDecoder().decode(await blobBytes(blob));
  options.signal?.throwIfAborted();
  options.onBytes?.(blob.size);
  yield inside(parsed(text));
}
