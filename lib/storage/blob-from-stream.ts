import { eachChunk } from './each-chunk';

const PART_BYTES = 8 * 1024 * 1024;

/**
 * Gathers a stream into a Blob. The chunks are handed over in parts of a few megabytes, which the browser may put on
 * disk; one Blob made at the end of all chunks would hold them in memory until then.
 *
 * @throws whatever the stream throws, and the signal's reason once it is aborted
 */
export const blobFromStream = async (stream: ReadableStream<Uint8Array>, signal?: AbortSignal): Promise<Blob> => {
  const parts: Blob[] = [];
  let chunks: Uint8Array<ArrayBuffer>[] = [];
  let bytes = 0;
  await eachChunk(
    stream,
    (chunk) => {
      chunks.push(chunk);
      bytes += chunk.length;
      if (bytes < PART_BYTES) return;
      parts.push(new Blob(chunks));
      chunks = [];
      bytes = 0;
    },
    signal,
  );
  return new Blob([...parts, ...chunks]);
};
