import { type ClientVisit } from './client-visit';
import { errorOfValue, type ErrorOfValue } from './study-values';
import { VALUES, type ValueName } from './visit-value';

export type RealisedErrors = ReadonlyMap<ValueName, ErrorOfValue>;

/** The realised error of every value, from all clients. */
export const realisedErrors = (visits: readonly ClientVisit[]): RealisedErrors =>
  new Map(VALUES.map(({ name }) => [name, errorOfValue(name, visits)]));

export const errorNamed = (errors: RealisedErrors, name: ValueName): ErrorOfValue => {
  const error = errors.get(name);
  if (error === undefined) throw new Error(`No error of ${name}.`);
  return error;
};

/** The band in which the realised LSC of one reading against one has to lie. */
export const LSC_BANDS: readonly { readonly name: ValueName; readonly low: number; readonly high: number }[] = [
  { name: 'ffm', low: 1.6, high: 1.85 },
  { name: 'ffm without weight', low: 1.4, high: 1.65 },
  { name: 'phase angle', low: 0.36, high: 0.43 },
  { name: 'impedance per height', low: 17, high: 21 },
  { name: 'weight', low: 1.2, high: 1.5 },
];

/** What is outside its band, in words. */
export const bandFailures = (errors: RealisedErrors): string[] =>
  LSC_BANDS.flatMap(({ name, low, high }) => {
    const { single } = errorNamed(errors, name);
    return single >= low && single <= high
      ? []
      : [`LSC of ${name} is ${single.toFixed(3)}, not within ${low}–${high}.`];
  });
