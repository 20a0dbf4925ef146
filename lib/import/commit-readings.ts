import type { AppError } from '../core/app-error';
import type { Result } from '../core/result';
import type { Engine } from '../engine/types';
import type { ImportInput, JudgeOptions } from './import-input';
import { judge } from './judge';
import type { ImportPlan } from './plan';
import { readingsStatements } from './readings-sql';

/**
 * Executes an import: the same judgement as the preview, then the accepted rows become `readings` and
 * `enrolment_rows`. Rejects with an AbortError when the signal fires; then the tables are not whole.
 */
export const commitReadings = async (
  engine: Engine,
  inputs: readonly ImportInput[],
  options: Omit<JudgeOptions, 'prefix'>,
): Promise<Result<ImportPlan, AppError>> => {
  const plan = await judge(engine, inputs, { ...options, prefix: '' });
  if (!plan.ok) return plan;
  for (const statement of readingsStatements()) {
    options.signal?.throwIfAborted();
    await engine.run(statement);
  }
  return plan;
};
