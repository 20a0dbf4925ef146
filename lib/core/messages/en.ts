import type { Formatters } from '../formatters';
import { common } from './en/common';
import { measureNames } from './en/measure-names';

/** The English words of every screen. Another language is a function of the same type. */
export const en = (f: Formatters) => ({
  common: common(f),
  measures: measureNames,
});

export type Messages = ReturnType<typeof en>;
