import { type AppError } from '../../core/app-error';

/** Prints an expected failure for a person and lets the process end with exit code 1. */
export const reportFailure = (error: AppError): void => {
  console.error(`${error.message}\n${error.remedy}`);
  process.exitCode = 1;
};
