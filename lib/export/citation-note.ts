import type { Citation } from '../measures/citation';

const listed = new Intl.ListFormat('en-GB', { type: 'conjunction' });

/** What of a reference has to be checked before it is printed; undefined where all that stands there was read. */
export const citationNote = ({ fromMemory = [], authors, andOthers }: Citation): string | undefined => {
  const names = authors.length === 0 ? 'The authors’ names were not read.' : '';
  const others = andOthers === true ? 'Further authors are not listed.' : '';
  const memory =
    fromMemory.length === 0 ? '' : `From memory, to be checked before printing: ${listed.format([...fromMemory])}.`;
  const note = [memory, names, others].filter((sentence) => sentence !== '').join(' ');
  return note === '' ? undefined : note;
};
