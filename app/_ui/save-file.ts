import type { MadeFile } from '../../lib/workspace/table-file';

/** Hands a made file to the person, through the browser's own download. Nothing leaves the machine. */
export const saveFile = ({ name, mediaType, text }: MadeFile): void => {
  const address = URL.createObjectURL(new Blob([text], { type: mediaType }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The download has its own hold on the data after this turn.
  setTimeout(() => {
    URL.revokeObjectURL(address);
  }, 1000);
};
