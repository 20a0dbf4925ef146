import type { Settings } from '../cohort/settings';
import { mergeList, mergeValue, type MergeWork } from './three-way';

type ErrorStudy = Settings['errorStudy'];

/** How the error study is read, out of three: choice by choice, relative forms by value. */
export const mergeErrorStudy = (
  work: MergeWork,
  base: ErrorStudy,
  mine: ErrorStudy,
  theirs: ErrorStudy,
): ErrorStudy => {
  const path = (part: string): string => `settings.errorStudy.${part}`;
  const of = <Key extends keyof ErrorStudy>(key: Key) => [base[key], mine[key], theirs[key]] as const;
  return {
    includeRoutine: mergeValue(work, path('includeRoutine'), ...of('includeRoutine')),
    logForm: mergeList(work, { path: path('logForm'), keyOf: ({ measure }) => measure }, ...of('logForm')),
    cautious: mergeValue(work, path('cautious'), ...of('cautious')),
    errorFrom: mergeValue(work, path('errorFrom'), ...of('errorFrom')),
  };
};
