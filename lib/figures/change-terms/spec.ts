import type { LinearAxis } from '../linear-axis';
import type { Ucum } from '../../core/units';

export interface ChangeTermsData {
  readonly title: string;
  readonly unit: Ucum;
  readonly digits: number;
  /** Parts of the change in the value's unit, in the order to draw them. */
  readonly terms: readonly { readonly id: string; readonly label: string; readonly value: number }[];
  /** The change itself; the terms sum to it. */
  readonly change: number;
}

export interface ChangeTerm {
  readonly key: string;
  readonly label: string;
  readonly value: number;
  readonly valueLabel: string;
}

/** Diverging bars of the parts of one change, and the change they sum to. */
export interface ChangeTermsSpec {
  readonly kind: 'change-terms';
  readonly width: number;
  readonly axis: LinearAxis;
  readonly terms: readonly ChangeTerm[];
  readonly change: ChangeTerm;
  readonly message?: string;
}
