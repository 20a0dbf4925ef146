import { DEFAULT_EQUATIONS, type EquationsInForce } from '../measures/catalogue';
import type { Equation, Quantity } from '../measures/equation';
import { PUBLISHED_EQUATIONS } from '../measures/equations/published-equations';
import type { Settings } from './settings';

/** Earlier versions stay in the settings, so that what was computed with them can be explained. */
const latestVersions = (equations: readonly Equation[]): readonly Equation[] =>
  equations.filter(({ id, version }) => !equations.some((other) => other.id === id && other.version > version));

/** The equations that a clinic can choose from: the published ones and its own, latest version each. */
export const equationsOfClinic = (settings: Settings): readonly Equation[] => [
  ...PUBLISHED_EQUATIONS,
  ...latestVersions(settings.methods.ownEquations),
];

/**
 * Whether a clinic may compute with an equation: read in a source, or from memory and switched on. Readings on another
 * electrode path than the equation's are stopped one by one.
 */
export const canBeInForce = (equation: Equation, settings: Settings): boolean =>
  equation.verification !== 'from-memory' || settings.methods.switchedOn.includes(equation.id);

/** The equation chosen for a quantity; undefined where none is, or where it may not be in force. */
export const chosenEquation = (settings: Settings, quantity: Quantity): Equation | undefined => {
  const id = settings.methods.equations[quantity];
  const found = equationsOfClinic(settings).find((equation) => equation.id === id && equation.quantity === quantity);
  return found !== undefined && canBeInForce(found, settings) ? found : undefined;
};

/** The equations that the settings put in force. */
export const equationsInForce = (settings: Settings): EquationsInForce => ({
  ffm: chosenEquation(settings, 'ffm') ?? DEFAULT_EQUATIONS.ffm,
  smm: chosenEquation(settings, 'smm') ?? null,
  asm: chosenEquation(settings, 'asm') ?? null,
  tbw: chosenEquation(settings, 'tbw') ?? null,
  ecw: chosenEquation(settings, 'ecw') ?? null,
  geometryCorrected: settings.methods.geometryCorrected,
});
