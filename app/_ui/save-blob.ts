import type { MadeBlob } from '../../lib/workspace/workspace';

const KEPT_MS = 60_000;

/** Hands a made file to the person, through the browser's own download. Nothing leaves the machine. */
export const saveBlob = ({ name, blob }: MadeBlob): void => {
  const address = URL.createObjectURL(blob);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // A large file is still being written after this turn.
  setTimeout(() => {
    URL.revokeObjectURL(address);
  }, KEPT_MS);
};
