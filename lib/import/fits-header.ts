import type { Mapping } from './mapping';

const trimmed = (header: readonly string[]): readonly string[] => {
  const names = header.map((name) => name.trim());
  while (names.at(-1) === '') names.pop();
  return names;
};

/** Whether a mapping was made for a table with this header: the same names in the same order. */
export const fitsHeader = (mapping: Pick<Mapping, 'header'>, header: readonly string[]): boolean => {
  const [own, other] = [trimmed(mapping.header), trimmed(header)];
  return own.length === other.length && own.every((name, place) => name === other[place]);
};
