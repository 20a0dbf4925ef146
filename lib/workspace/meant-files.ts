import type { GivenFile } from './workspace';

// Files that an operating system puts beside others by itself; nobody means to import them.
const BY_SYSTEM = new Set(['thumbs.db', 'desktop.ini']);

const isMeant = (path: string): boolean => {
  const [folder = '', ...inside] = path.split('/');
  const name = inside.at(-1) ?? folder;
  const isHidden = name.startsWith('.') || inside.some((part) => part.startsWith('.'));
  return name !== '' && !isHidden && !BY_SYSTEM.has(name.toLowerCase()) && !path.split('/').includes('__MACOSX');
};

/** Files of a folder, each named by its path in it: by name, without hidden ones and what a system put there. */
export const meantFiles = (files: readonly GivenFile[]): readonly GivenFile[] =>
  files
    .filter(({ name }) => isMeant(name))
    .sort((one, other) => (one.name < other.name ? -1 : one.name > other.name ? 1 : 0));
