import type { Equation } from '../../../lib/measures/equation';
import { ownEquationSchema } from '../../../lib/measures/own-equation';
import { fitsForm } from './draft-from';

const LARGEST = 200_000;

/** An own equation from the text of its JSON file; undefined where it holds none that the form can show. */
export const readOwnEquation = (text: string): Equation | undefined => {
  if (text.length > LARGEST) return undefined;
  try {
    const parsed = ownEquationSchema.safeParse(JSON.parse(text.replace(/^\uFEFF/, '')));
    return parsed.success && fitsForm(parsed.data) ? parsed.data : undefined;
  } catch {
    return undefined;
  }
};
