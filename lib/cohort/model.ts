import { catalogueFor, type Catalogue } from '../measures/catalogue';
import type { ComparabilityRule } from '../measures/comparability-rule';
import type { Expression } from '../measures/expression';
import { guardsOf, type Guards } from '../measures/guard';
import type { Measure } from '../measures/measure';
import type { AnyMeasureId, MeasureId } from '../measures/measure-id';
import { basesOf, type Bases } from './basis';
import { equationsInForce } from './equations-in-force';
import { publishedGradient } from './published-error';
import { gradeMasks, rulesInForce, type GradeMasks } from './rules-in-force';
import type { Settings } from './settings';
import type { DeviceConversion } from './settings-parts/device-settings';

/** What the settings make of the computation: values with their equations, rules, guards. All SQL texts are made from it. */
export interface CohortModel {
  readonly catalogue: Catalogue;
  readonly bases: Bases;
  readonly rules: readonly ComparabilityRule[];
  readonly masks: GradeMasks;
  /** The lean value for the contact lists; fat-free mass where the chosen one is not followed. */
  readonly lean: MeasureId;
  readonly guards: (measure: Measure) => Guards;
  /** How the error study is read. */
  readonly study: Settings['errorStudy'];
  /** Values whose threshold is a published error at each reading's own values, with the value's derivative by the impedance. */
  readonly publishedGradients: ReadonlyMap<AnyMeasureId, Expression>;
  /** How many devices accepted conversions lead to; 0: no value is ever converted. */
  readonly conversionTargets: number;
}

/** The devices that accepted conversions lead to, by number. */
export const conversionTargetsOf = (conversions: readonly DeviceConversion[]): readonly string[] =>
  [...new Set(conversions.flatMap(({ first, second }) => [first, second]))].sort();

/** The model of these settings. */
export const cohortModel = (settings: Settings): CohortModel => {
  const catalogue = catalogueFor(equationsInForce(settings));
  const rules = rulesInForce(settings);
  return {
    catalogue,
    bases: basesOf(catalogue.all),
    rules,
    masks: gradeMasks(rules),
    lean: catalogue.follows(settings.leanMeasure) ? settings.leanMeasure : 'ffm',
    guards: (measure) => guardsOf(measure, settings.outsideEquation),
    study: settings.errorStudy,
    publishedGradients: new Map(
      settings.errorSource.kind === 'published'
        ? catalogue.all.flatMap((measure) => {
            const gradient = publishedGradient(measure);
            return gradient === undefined ? [] : [[measure.id, gradient] as const];
          })
        : [],
    ),
    conversionTargets: conversionTargetsOf(settings.devices.conversions).length,
  };
};
