const PIECE_BYTES = 1024 * 1024;

const pieceOf = async (blob: Blob, offset: number): Promise<Uint8Array> =>
  new Uint8Array(await blob.slice(offset, offset + PIECE_BYTES).arrayBuffer());

/**
 * Whether two files hold the same bytes, read piece by piece.
 *
 * @throws the signal's reason once it is aborted; a DOMException where a file cannot be read
 */
export const sameBytes = async (one: Blob, other: Blob, signal?: AbortSignal): Promise<boolean> => {
  if (one.size !== other.size) return false;
  for (let offset = 0; offset < one.size; offset += PIECE_BYTES) {
    signal?.throwIfAborted();
    const [left, right] = await Promise.all([pieceOf(one, offset), pieceOf(other, offset)]);
    if (left.length !== right.length || left.some((byte, at) => byte !== right[at])) return false;
  }
  return true;
};
