import type { ProgramRow } from '../../../lib/cohort/types/program-row';
import type { ReviewCounts } from '../../../lib/cohort/types/reviews';
import type { Formatters } from '../../../lib/core/formatters';
import type { programs } from '../../../lib/core/messages/en/programs';
import type { Measure } from '../../../lib/measures/measure';
import type { DataColumn } from '../../_ui/data-column';
import { ROW_NAME } from '../../_ui/row-name';
import { programSummary } from './program-summary';
import styles from './programs-screen.module.css';

type Words = ReturnType<typeof programs>;

/** Pairs that got a result: what up, down and within are counted of. */
export const judgedPairs = (row: ProgramRow): number => row.up + row.down + row.within;

const Share = ({ n, of, words }: { readonly n: number; readonly of: number; readonly words: Words }) => {
  const percent = words.share({ n, of });
  return (
    <>
      {words.count({ n, of })}
      {percent === undefined ? null : <span className={styles.percent}>{percent}</span>}
    </>
  );
};

/** Seen of those due at the planned review, and on which day. */
const reviewColumns = (
  reviews: readonly ReviewCounts[],
  words: Words,
  f: Formatters,
): readonly DataColumn<ProgramRow>[] => {
  const of = ({ program }: ProgramRow): ReviewCounts | undefined => reviews.find((one) => one.program === program);
  return [
    { id: 'due', title: words.columns.due, kind: 'number', value: (row) => of(row)?.due ?? null },
    {
      id: 'seen',
      title: words.columns.seen,
      kind: 'number',
      value: (row) => of(row)?.seen ?? null,
      cell: (row) => {
        const counts = of(row);
        return counts === undefined ? words.notSaid : <Share n={counts.seen} of={counts.due} words={words} />;
      },
    },
    {
      id: 'day',
      title: words.columns.day,
      kind: 'number',
      value: (row) => of(row)?.actualDay?.median ?? null,
      cell: (row) => {
        const day = of(row)?.actualDay ?? null;
        if (day === null) return words.notSaid;
        return (
          <>
            {f.number(day.median)}
            <span className={styles.percent}>{words.quartiles({ q1: f.number(day.q1), q3: f.number(day.q3) })}</span>
          </>
        );
      },
    },
  ];
};

/** The table of the programs: counts as n/N, the mean with its interval, each program's sentence under its name. */
export const programColumns = (
  { measure, reviews }: { readonly measure: Measure; readonly reviews: readonly ReviewCounts[] | undefined },
  words: Words,
  f: Formatters,
): readonly DataColumn<ProgramRow>[] => {
  const count = (
    id: keyof Pick<ProgramRow, 'up' | 'down' | 'within' | 'cannotCompare' | 'noThreshold' | 'held' | 'stopped'>,
    of: (row: ProgramRow) => number,
  ): DataColumn<ProgramRow> => ({
    id,
    title: words.columns[id],
    kind: 'number',
    value: (row) => row[id],
    cell: (row) => <Share n={row[id]} of={of(row)} words={words} />,
  });
  const pairs = (row: ProgramRow): number => row.nPairs;
  const number = (
    id: 'clients' | 'pairs' | 'compared',
    value: (row: ProgramRow) => number,
  ): DataColumn<ProgramRow> => ({
    id,
    title: words.columns[id],
    kind: 'number',
    value,
  });
  const change = (id: string, title: string, value: (row: ProgramRow) => number | null): DataColumn<ProgramRow> => ({
    id,
    title,
    kind: 'change',
    unit: measure.unit,
    digits: measure.decimals + 1,
    value,
  });
  return [
    {
      id: 'program',
      title: words.columns.program,
      value: (row) => row.program,
      cell: (row) => (
        <span className={styles.program} {...{ [ROW_NAME]: row.program }}>
          <bdi className="strong">{row.program}</bdi>
          <span className={styles.summary}>{programSummary(row, measure, words, f)}</span>
        </span>
      ),
    },
    ...(reviews === undefined ? [number('clients', (row) => row.nClients)] : reviewColumns(reviews, words, f)),
    number('pairs', pairs),
    number('compared', (row) => row.nComparable),
    change('mean', words.columns.mean, (row) => row.mean),
    change('low', words.columns.low, (row) => row.interval?.[0] ?? null),
    change('high', words.columns.high, (row) => row.interval?.[1] ?? null),
    count('up', judgedPairs),
    count('down', judgedPairs),
    count('within', judgedPairs),
    count('cannotCompare', pairs),
    count('noThreshold', pairs),
    count('held', pairs),
    count('stopped', pairs),
    {
      id: 'asMeant',
      title: words.columns.asMeant,
      kind: 'number',
      value: (row) => row.asMeant?.n ?? null,
      cell: ({ asMeant }) => (asMeant === null ? words.notSaid : <Share n={asMeant.n} of={asMeant.of} words={words} />),
    },
  ];
};
