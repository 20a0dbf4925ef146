import type { FigureWords } from '../figure-context';
import type { FigureTable } from '../figure-table';
import type { ProgramIntervalsSpec } from './spec';

/** The text alternative: each program's mean change with its interval and n. */
export const describeProgramIntervals = (spec: ProgramIntervalsSpec, words: FigureWords): string =>
  spec.message ??
  `${words.programIntervals({ title: spec.axis.title, programs: spec.programs.length })} ${spec.programs
    .map((program) => program.focusLabel)
    .join('; ')}.`;

/** One row per program: mean change, interval, error of one person, n. */
export const tableProgramIntervals = (spec: ProgramIntervalsSpec, words: FigureWords): FigureTable => ({
  columns: [
    { title: words.columnProgram, align: 'start' },
    { title: `${words.columnMeanChange}: ${spec.axis.title}`, align: 'end' },
    { title: words.columnInterval, align: 'end' },
    { title: words.columnErrorOfOne, align: 'end' },
    { title: words.columnSeen, align: 'end' },
  ],
  rows: spec.programs.map((program) => [
    program.label,
    program.meanText,
    program.estimate === undefined ? words.tooFew : words.range({ low: program.lowText, high: program.highText }),
    program.errorText,
    program.nText,
  ]),
});
