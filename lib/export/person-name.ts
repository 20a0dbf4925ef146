/** An author as reference lists want it: a person with initials, or a name that is not taken apart. */
export type PersonName = { readonly family: string; readonly given: string } | { readonly literal: string };

const INITIALS = /^\p{Lu}(?:-?\p{Lu}){0,3}$/u;

/** `U. G.` from `UG`, `J.-P.` from `J-P`. */
const spelledInitials = (initials: string): string =>
  [...initials]
    .map((letter) => (letter === '-' ? '-' : `${letter}. `))
    .join('')
    .replaceAll(' -', '-')
    .trim();

/**
 * Splits `Kyle UG` into family name and initials, `Kyle, Ursula` at its comma. A single word or a body such as a
 * national institute stays whole.
 */
export const personName = (author: string): PersonName => {
  const text = author.trim().replace(/\s+/gu, ' ');
  const comma = text.split(', ');
  if (comma.length === 2 && comma[0] && comma[1]) return { family: comma[0], given: comma[1] };
  const words = text.split(' ');
  const last = words.at(-1) ?? '';
  return words.length > 1 && INITIALS.test(last)
    ? { family: words.slice(0, -1).join(' '), given: spelledInitials(last) }
    : { literal: text };
};
