import type { EquationFit } from '../../../lib/cohort/types/methods';
import type { Messages } from '../../../lib/core/messages/en';

/** Which equation computes fat-free mass here, and how many visits lie inside the group it was made for. */
export const methodsFinding = (fits: readonly EquationFit[], words: Messages['methods']): string => {
  const [first] = fits;
  return first === undefined || fits.every(({ visits }) => visits === 0)
    ? words.needs.title
    : words.finding({
        quantity: first.quantity,
        equation: first.equation.name,
        inside: first.inside,
        visits: first.visits,
      });
};

/** What the visits outside an equation's group miss, the most frequent first. */
export const missedParts = (
  fit: EquationFit,
  words: Messages['methods'],
): readonly { readonly what: string; readonly visits: number }[] =>
  fit.outside
    .filter(({ visits }) => visits > 0)
    .toSorted((one, other) => other.visits - one.visits)
    .map(({ code, visits }) => ({ what: words.inForce.missing[code] ?? code, visits }));
