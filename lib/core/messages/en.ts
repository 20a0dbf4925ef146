import type { Formatters } from '../formatters';
import { common } from './en/common';
import { filter } from './en/filter';
import { reasons } from './en/reasons';
import { shell } from './en/shell';
import { table } from './en/table';
import { measureNames } from './en/measure-names';

/** The English words of every screen. Another language is a function of the same type. */
export const en = (f: Formatters) => ({
  common: common(f),
  measures: measureNames,
  table: table(f),
  shell: shell(f),
  reasons,
  filter: filter(f),
});

export type Messages = ReturnType<typeof en>;
