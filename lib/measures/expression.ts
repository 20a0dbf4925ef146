import type { InputId } from './input-id';

/** Holds where the input is known and from ≤ input < below; a missing end is open. */
export interface Condition {
  readonly input: InputId;
  readonly from?: number;
  readonly below?: number;
}

/** A case of `choose`: all conditions hold. */
export interface Case {
  readonly when: readonly Condition[];
  readonly then: Expression;
}

/** A formula as data. One evaluator (evaluate.ts) and one SQL compiler (compile-sql.ts) read it. */
export type Expression =
  | { readonly op: 'input'; readonly input: InputId }
  | { readonly op: 'constant'; readonly value: number }
  | { readonly op: 'sum'; readonly of: readonly Expression[] }
  | { readonly op: 'product'; readonly of: readonly Expression[] }
  | { readonly op: 'difference'; readonly minuend: Expression; readonly subtrahend: Expression }
  | { readonly op: 'quotient'; readonly dividend: Expression; readonly divisor: Expression }
  | { readonly op: 'square_root'; readonly of: Expression }
  | { readonly op: 'angle_degrees'; readonly y: Expression; readonly x: Expression }
  | { readonly op: 'choose'; readonly cases: readonly Case[] };

export const input = (id: InputId): Expression => ({ op: 'input', input: id });
export const constant = (value: number): Expression => ({ op: 'constant', value });
export const sum = (...of: readonly Expression[]): Expression => ({ op: 'sum', of });
export const product = (...of: readonly Expression[]): Expression => ({ op: 'product', of });
export const difference = (minuend: Expression, subtrahend: Expression): Expression => ({
  op: 'difference',
  minuend,
  subtrahend,
});
export const quotient = (dividend: Expression, divisor: Expression): Expression => ({
  op: 'quotient',
  dividend,
  divisor,
});
export const squareRoot = (of: Expression): Expression => ({ op: 'square_root', of });
/** The angle of the point (x, y) above the x axis, in degrees. */
export const angleDegrees = (y: Expression, x: Expression): Expression => ({ op: 'angle_degrees', y, x });
/** The first case whose conditions hold; unknown where none does. */
export const choose = (...cases: readonly Case[]): Expression => ({ op: 'choose', cases });
