import type { MadeBlob } from '../../lib/workspace/workspace';

const HOLD_MS = 1000;

/** Hands a made file of bytes to the person, through the browser's own download. Nothing leaves the machine. */
export const saveBlob = ({ name, blob }: MadeBlob): void => {
  const address = URL.createObjectURL(blob);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The download has its own hold on the data after this turn.
  setTimeout(() => {
    URL.revokeObjectURL(address);
  }, HOLD_MS);
};
