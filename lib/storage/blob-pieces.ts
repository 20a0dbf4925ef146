const PIECE_BYTES = 1024 * 1024;

/**
 * A file as a stream of pieces of at most 1 MiB, each read when it is asked for. `Blob.stream` gives pieces of any size:
 * Node hands out a part that lies in memory whole, and a step could not be stopped in it.
 */
export const blobPieces = (blob: Blob): ReadableStream<Uint8Array<ArrayBuffer>> => {
  let offset = 0;
  return new ReadableStream<Uint8Array<ArrayBuffer>>(
    {
      pull: async (controller) => {
        if (offset >= blob.size) {
          controller.close();
          return;
        }
        const piece = new Uint8Array(await blob.slice(offset, offset + PIECE_BYTES).arrayBuffer());
        if (piece.length === 0) throw new DOMException('the file became shorter', 'NotReadableError');
        offset += piece.length;
        controller.enqueue(piece);
      },
    },
    { highWaterMark: 0 },
  );
};
