import type { Measure } from './measure';

/** Stop: no result. Hold: the value is shown, no result, counted apart. Note: a sentence beside the result. */
export type GuardKind = 'none' | 'note' | 'hold' | 'stop';

/** What a guard has seen at a visit or between two visits. */
export const GUARD_CODES = [
  'fluid',
  'dialysis',
  'pregnancy',
  'body_geometry',
  'under_18',
  'not_the_equations_path',
  'bmi_outside_equation',
  'bmi_outside_16_34',
  'age_outside_equation',
  'lying_equation_standing',
  'fast_weight_loss',
  'mostly_weight_term',
  'fits_less_water',
  'fits_cell_mass',
  'sex_outside_equation',
  'bmi_unknown',
  'standing_equation_lying',
  'bmi_not_recorded',
] as const;

export type GuardCode = (typeof GUARD_CODES)[number];

/** Whether readings outside the group that an equation was made for are only marked, or left without a result. */
export type OutsideEquation = 'mark' | 'exclude';

export type Guards = Readonly<Record<'stop' | 'hold' | 'note', readonly GuardCode[]>>;

/** The guards that say a reading lies outside an equation's group and are notes by default. */
const OUTSIDE: readonly GuardCode[] = [
  'age_outside_equation',
  'sex_outside_equation',
  'lying_equation_standing',
  'standing_equation_lying',
];

/** The bit of a guard in a visit's or a pair's mask. */
export const guardBit = (code: GuardCode): number => 1 << GUARD_CODES.indexOf(code);

const ALWAYS_STOP: readonly GuardCode[] = ['pregnancy', 'under_18'];

/**
 * Which guards stop, hold or only note a value: pregnancy and growth stop everything; fluid and dialysis stop
 * composition, computed or exported; a body that differs from what an equation assumes stops all but weight; a body
 * mass index outside the equation's group holds what it computes, outside 16–34 (ESPEN, Clin Nutr 2004;23:1430–1453)
 * also what the device exported; where it is not known at one end, nobody can say on which side it lies, and the same is
 * held. Where it is known for nobody in these data, what the device exported is judged with a note, like any condition that
 * the data do not record at all; what an equation computes stays held. Other readings outside the equation's group are marked, or held where the clinic excludes
 * them.
 */
export const guardsOf = (measure: Pick<Measure, 'group' | 'equation'>, outside: OutsideEquation = 'mark'): Guards => {
  switch (measure.group) {
    case 'weight':
      return { stop: ALWAYS_STOP, hold: [], note: ['fast_weight_loss'] };
    case 'waist':
      return { stop: ALWAYS_STOP, hold: [], note: [] };
    case 'bmi':
      return { stop: [...ALWAYS_STOP, 'body_geometry'], hold: [], note: ['fast_weight_loss'] };
    case 'electrical':
      return { stop: [...ALWAYS_STOP, 'body_geometry'], hold: [], note: [] };
    case 'composition-exported':
      return {
        stop: [...ALWAYS_STOP, 'body_geometry', 'fluid', 'dialysis'],
        hold: ['bmi_outside_16_34', 'bmi_unknown'],
        note: ['fast_weight_loss', 'bmi_not_recorded'],
      };
    case 'composition':
      return {
        stop: [...ALWAYS_STOP, 'body_geometry', 'fluid', 'dialysis', 'not_the_equations_path'],
        hold: [
          'bmi_outside_16_34',
          'bmi_unknown',
          'bmi_not_recorded',
          ...(measure.equation?.population.bmi === undefined ? [] : (['bmi_outside_equation'] as const)),
          ...(outside === 'exclude' ? OUTSIDE : []),
        ],
        note: [
          ...(outside === 'exclude' ? [] : OUTSIDE),
          'fast_weight_loss',
          'mostly_weight_term',
          'fits_less_water',
          'fits_cell_mass',
        ],
      };
  }
};

/** A mask of several guards. */
export const guardMask = (codes: readonly GuardCode[]): number =>
  codes.reduce((mask, code) => mask | guardBit(code), 0);
