/**
 * Reads a stream to its end, one chunk at a time, and waits for each to be dealt with.
 *
 * @throws the signal's reason once it is aborted; whatever the stream or `take` throws
 */
export const eachChunk = async (
  stream: ReadableStream<Uint8Array>,
  take: (chunk: Uint8Array<ArrayBuffer>) => void | Promise<void>,
  signal?: AbortSignal,
): Promise<void> => {
  const reader = stream.getReader();
  try {
    for (;;) {
      signal?.throwIfAborted();
      const { done, value } = await reader.read();
      if (done) return;
      await take(value as Uint8Array<ArrayBuffer>);
    }
  } catch (error) {
    await reader.cancel(error).catch(() => undefined);
    throw error;
  } finally {
    reader.releaseLock();
  }
};
