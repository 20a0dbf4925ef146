import type { PrecisionRow } from '../../../lib/cohort/types/precision-row';
import type { Formatters } from '../../../lib/core/formatters';
import type { repeatability } from '../../../lib/core/messages/en/repeatability';
import { MEASURE_FACTS } from '../../../lib/measures/measure-facts';
import type { DataColumn } from '../../_ui/data-column';
import { ROW_NAME } from '../../_ui/row-name';
import styles from './repeatability-screen.module.css';

type Words = ReturnType<typeof repeatability>;

/** Degrees of freedom of the component that the threshold's range rests on. */
export const decisiveDf = (row: PrecisionRow): number =>
  row.outsideDf ?? (row.tier === 5 ? row.dfWithin : row.dfBetween);

/** The table of the error study. A value is in the unit its row names; files hold SI. */
export const precisionColumns = (
  words: Words,
  nameOf: (row: PrecisionRow) => string,
  f: Formatters,
): readonly DataColumn<PrecisionRow>[] => {
  /** Relative rows: an error in per cent, a threshold as the factor upwards. */
  const relative = (id: string, value: number): string =>
    id.startsWith('lsc') ? words.factor({ factor: f.number(Math.exp(value), 3) }) : f.percent(value, 1);
  const written = (row: PrecisionRow, value: number, id: string): string => {
    if (row.form === 'log') return relative(id, value);
    const { unit, decimals } = MEASURE_FACTS[row.measure];
    return f.value(value, unit, decimals + 1);
  };
  const size = (id: string, title: string, value: (row: PrecisionRow) => number | null): DataColumn<PrecisionRow> => ({
    id,
    title,
    kind: 'number',
    value,
    cell: (row) => {
      const found = value(row);
      return found === null ? undefined : written(row, found, id);
    },
  });
  const range = (
    id: string,
    title: string,
    value: (row: PrecisionRow) => readonly [number, number] | null,
    write: (row: PrecisionRow, low: number, high: number) => string,
  ): DataColumn<PrecisionRow> => ({
    id,
    title,
    kind: 'number',
    value: (row) => {
      const found = value(row);
      if (found === null) return null;
      const digits = row.form === 'log' ? 4 : MEASURE_FACTS[row.measure].decimals + 1;
      const [low, high] = found.map((end) => end.toFixed(digits));
      return words.range({ low: low ?? '', high: high ?? '' });
    },
    cell: (row) => {
      const found = value(row);
      return found === null ? undefined : <span className="no-wrap">{write(row, found[0], found[1])}</span>;
    },
  });
  const writeRange =
    (id: string) =>
    (row: PrecisionRow, low: number, high: number): string =>
      words.range({ low: written(row, low, id), high: written(row, high, id) });
  return [
    {
      id: 'value',
      title: words.columns.value,
      value: nameOf,
      cell: (row) => (
        <span className={styles.value} {...{ [ROW_NAME]: row.measure }}>
          {nameOf(row)}
        </span>
      ),
    },
    {
      id: 'unit',
      title: words.columns.unit,
      value: (row) => f.unit(MEASURE_FACTS[row.measure].unit),
      cell: (row) => <span className="no-wrap">{f.unit(MEASURE_FACTS[row.measure].unit)}</span>,
    },
    {
      id: 'kind',
      title: words.columns.kind,
      value: (row) => (row.provisional ? `${words.tier[row.tier]}, ${words.provisional}` : words.tier[row.tier]),
      cell: (row) => (
        <span className={styles.kind}>
          {words.tier[row.tier]}
          {row.provisional ? <span className={styles.mark}>{words.provisional}</span> : null}
          {row.form === 'log' ? <span className={styles.mark}>{words.relative}</span> : null}
        </span>
      ),
    },
    {
      id: 'people',
      title: words.columns.people,
      kind: 'number',
      value: (row) => (row.tier === 6 ? null : row.clients),
    },
    { id: 'df', title: words.columns.df, kind: 'number', value: (row) => (row.tier === 6 ? null : decisiveDf(row)) },
    size('sw', words.columns.sw, (row) => row.sw),
    size('sb', words.columns.sb, (row) => row.sb),
    size('pe', words.columns.pe, (row) => row.pe),
    range('peRange', words.columns.peRange, (row) => row.peInterval, writeRange('pe')),
    size('lsc', words.columns.lsc, (row) => row.lsc),
    range('lscRange', words.columns.lscRange, (row) => row.lscInterval, writeRange('lsc')),
    range(
      'changed',
      words.columns.changed,
      (row) => row.changedPer100,
      (_, low, high) => words.between({ low, high }),
    ),
  ];
};
