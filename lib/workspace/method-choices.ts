import { canBeInForce, chosenEquation, equationsOfClinic } from '../cohort/equations-in-force';
import type { Settings } from '../cohort/settings';
import { DEFAULT_EQUATIONS } from '../measures/catalogue';
import { QUANTITIES, type Equation, type Quantity } from '../measures/equation';

/** The electrode path of the export's resistance and reactance. */
const EXPORT_PATH = 'hand-to-foot';

/** From which equations a quantity can be computed here, and by which it is. */
export interface MethodChoice {
  readonly quantity: Quantity;
  /** Null: not computed here. */
  readonly chosen: Equation | null;
  /** Whether it may be left without an equation. */
  readonly optional: boolean;
  /** Read in a source. */
  readonly read: readonly Equation[];
  readonly own: readonly Equation[];
  /** From memory; those that the clinic switched on may be chosen. */
  readonly fromMemory: readonly Equation[];
  /** Made for another electrode path than the one that exports hold: listed, never offered. */
  readonly otherPath: readonly Equation[];
}

const isOfOtherPath = ({ electrodePath, verification }: Equation): boolean =>
  verification !== 'entered-by-clinic' && electrodePath !== null && electrodePath !== EXPORT_PATH;

const choiceOf = (settings: Settings, quantity: Quantity): MethodChoice => {
  const all = equationsOfClinic(settings).filter((equation) => equation.quantity === quantity);
  const onPath = all.filter((equation) => !isOfOtherPath(equation));
  const verified = (...wanted: readonly Equation['verification'][]): readonly Equation[] =>
    onPath.filter(({ verification }) => wanted.includes(verification));
  return {
    quantity,
    chosen: chosenEquation(settings, quantity) ?? (quantity === 'ffm' ? DEFAULT_EQUATIONS.ffm : null),
    optional: quantity !== 'ffm',
    read: verified('read-in-abstract', 'read-in-secondary-text', 'definition'),
    own: verified('entered-by-clinic'),
    fromMemory: verified('from-memory'),
    otherPath: all.filter(isOfOtherPath),
  };
};

/** One choice for each quantity, in the order of the catalogue. */
export const methodChoices = (settings: Settings): readonly MethodChoice[] =>
  QUANTITIES.map((quantity) => choiceOf(settings, quantity));

/** Whether the clinic may choose an equation: read, entered, or from memory and switched on; and made for its path. */
export const mayBeChosen = (equation: Equation, settings: Settings): boolean =>
  canBeInForce(equation, settings) && !isOfOtherPath(equation);

/** Every equation that the clinic can see: published ones and its own. */
export const visibleEquations = (settings: Settings): readonly Equation[] => equationsOfClinic(settings);
