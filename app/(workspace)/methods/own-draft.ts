import type { EquationUnit, Quantity, Regressor } from '../../../lib/measures/equation';

export interface TermDraft {
  readonly coefficient: string;
  readonly regressor: Regressor;
}

export interface BranchDraft {
  readonly intercept: string;
  readonly terms: readonly TermDraft[];
}

/** An own equation as it is typed. */
export interface OwnDraft {
  /** Null for a new one. */
  readonly id: string | null;
  /** Of the one that is kept; 0 for a new one. */
  readonly keptVersion: number;
  readonly name: string;
  readonly quantity: Quantity;
  readonly unit: EquationUnit;
  readonly form: 'one' | 'sexes';
  readonly sexCoding: 'men' | 'women';
  readonly all: BranchDraft;
  readonly F: BranchDraft;
  readonly M: BranchDraft;
  readonly description: string;
  readonly n: string;
  readonly ageFrom: string;
  readonly ageTo: string;
  readonly bmiFrom: string;
  readonly bmiTo: string;
  readonly sex: 'both' | 'F' | 'M';
  readonly path: string;
  readonly posture: 'none' | 'lying' | 'standing';
  readonly frequency: string;
  readonly referenceMethod: string;
  readonly see: string;
  readonly authors: string;
  readonly title: string;
  readonly journal: string;
  readonly year: string;
  readonly doi: string;
}

/** The fields that can be incomplete. */
export type OwnField =
  | 'name'
  | 'terms'
  | 'coefficient'
  | 'intercept'
  | 'description'
  | 'n'
  | 'ages'
  | 'bmi'
  | 'path'
  | 'frequency'
  | 'referenceMethod'
  | 'see'
  | 'authors'
  | 'journal'
  | 'year';

export const EMPTY_BRANCH: BranchDraft = {
  intercept: '',
  terms: [{ coefficient: '', regressor: 'height2_per_resistance' }],
};

export const EMPTY_DRAFT: OwnDraft = {
  id: null,
  keptVersion: 0,
  name: '',
  quantity: 'ffm',
  unit: 'kg',
  form: 'one',
  sexCoding: 'men',
  all: EMPTY_BRANCH,
  F: EMPTY_BRANCH,
  M: EMPTY_BRANCH,
  description: '',
  n: '',
  ageFrom: '',
  ageTo: '',
  bmiFrom: '',
  bmiTo: '',
  sex: 'both',
  path: 'hand-to-foot',
  posture: 'lying',
  frequency: '50',
  referenceMethod: '',
  see: '',
  authors: '',
  title: '',
  journal: '',
  year: '',
  doi: '',
};
