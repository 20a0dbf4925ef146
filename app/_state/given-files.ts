import { meantFiles } from '../../lib/workspace/meant-files';
import type { GivenFile } from '../../lib/workspace/workspace';

/** Chosen files; those of a chosen folder with their path inside it, without what the system put there. */
export const givenFiles = (files: readonly File[]): readonly GivenFile[] =>
  meantFiles(
    files.map((file) => ({ name: file.webkitRelativePath === '' ? file.name : file.webkitRelativePath, blob: file })),
  );

const fileOf = (entry: FileSystemFileEntry): Promise<File> =>
  new Promise((resolve, reject) => {
    entry.file(resolve, reject);
  });

/** A reader gives a folder's entries in parts of about a hundred, and an empty part at the end. */
const entriesOf = async (folder: FileSystemDirectoryEntry): Promise<readonly FileSystemEntry[]> => {
  const reader = folder.createReader();
  const entries: FileSystemEntry[] = [];
  for (;;) {
    const part = await new Promise<FileSystemEntry[]>((resolve, reject) => {
      reader.readEntries(resolve, reject);
    });
    if (part.length === 0) return entries;
    entries.push(...part);
  }
};

const filesOf = async (entry: FileSystemEntry): Promise<readonly GivenFile[]> => {
  if (entry.isFile) {
    return [{ name: entry.fullPath.replace(/^\//, ''), blob: await fileOf(entry as FileSystemFileEntry) }];
  }
  const files: GivenFile[] = [];
  for (const inside of await entriesOf(entry as FileSystemDirectoryEntry)) files.push(...(await filesOf(inside)));
  return files;
};

/**
 * Dropped files, those of dropped folders with their path. Called while the drop is handled: afterwards the browser does
 * not tell any more what was dropped.
 */
export const givenByDrop = (data: DataTransfer): Promise<readonly GivenFile[]> => {
  const entries = [...data.items].map((item) => item.webkitGetAsEntry());
  const files = [...data.files];
  const gather = async (): Promise<readonly GivenFile[]> => {
    if (entries.includes(null)) return givenFiles(files);
    const gathered: GivenFile[] = [];
    for (const entry of entries) if (entry !== null) gathered.push(...(await filesOf(entry)));
    return meantFiles(gathered);
  };
  return gather().catch(() => givenFiles(files));
};
