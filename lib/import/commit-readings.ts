import type { AppError } from '../core/app-error';
import type { Result } from '../core/result';
import type { Engine } from '../engine/types';
import { judge, type JudgeOptions } from './judge';
import type { ImportPlan } from './plan';
import { readingsStatements } from './readings-sql';

/** Executes an import: the same judgement as the preview, then the accepted rows become `readings`. */
export const commitReadings = async (
  engine: Engine,
  files: readonly { readonly name: string; readonly bytes: Uint8Array }[],
  options: Omit<JudgeOptions, 'prefix'>,
): Promise<Result<ImportPlan, AppError>> => {
  const plan = await judge(engine, files, { ...options, prefix: '' });
  if (!plan.ok) return plan;
  for (const statement of readingsStatements()) await engine.run(statement);
  return plan;
};
