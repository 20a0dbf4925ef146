export type ClientWord = 'client' | 'patient' | 'participant';

const CLIENT = /\b([Cc])lient(s?)\b/g;

/** Marks from a private area of Unicode: they stand for what a person or a file said while the sentence is reworded. */
const OPEN = '\uE000';
const CLOSE = '\uE001';

const reworded = (text: string, word: Exclude<ClientWord, 'client'>): string =>
  text.replace(CLIENT, (_, first: string, plural: string) => {
    const said = first === 'C' ? word.charAt(0).toUpperCase() + word.slice(1) : word;
    return `${said}${plural}`;
  });

/** Texts of an argument that hold the word themselves (names, files) are put away and brought back unchanged. */
const shield = (value: unknown, kept: string[]): unknown => {
  if (typeof value === 'string') {
    if (value.search(CLIENT) === -1) return value;
    kept.push(value);
    return `${OPEN}${String(kept.length - 1)}${CLOSE}`;
  }
  if (Array.isArray(value)) return value.map((item) => shield(item, kept));
  if (typeof value === 'object' && value !== null)
    return Object.fromEntries(Object.entries(value).map(([name, item]) => [name, shield(item, kept)]));
  return value;
};

const unshield = (text: string, kept: readonly string[]): string =>
  text.replace(new RegExp(`${OPEN}(\\d+)${CLOSE}`, 'g'), (_, place: string) => kept[Number(place)] ?? '');

/**
 * The catalogue with the clinic's word for the people who are measured. What comes in through a sentence's arguments
 * (names, programs, files) keeps its own words.
 */
export const withClientWord = <T>(messages: T, word: ClientWord): T => {
  if (word === 'client') return messages;
  const change = (entry: unknown): unknown => {
    if (typeof entry === 'string') return reworded(entry, word);
    if (typeof entry === 'function')
      return (...given: readonly unknown[]): unknown => {
        const kept: string[] = [];
        const said = (entry as (...shielded: readonly unknown[]) => unknown)(...given.map((one) => shield(one, kept)));
        return typeof said === 'string' ? unshield(reworded(said, word), kept) : change(said);
      };
    if (Array.isArray(entry)) return entry.map(change);
    if (typeof entry === 'object' && entry !== null)
      return Object.fromEntries(Object.entries(entry).map(([name, item]) => [name, change(item)]));
    return entry;
  };
  return change(messages) as T;
};
