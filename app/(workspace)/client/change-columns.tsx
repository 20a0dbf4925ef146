import type { ChangeRow, Reason } from '../../../lib/cohort/types/change-row';
import { ResultMark } from '../../_ui/result-mark';
import type { DataColumn } from '../../_ui/data-column';
import { sameChangeAs } from '../../../lib/measures/same-change';
import type { Wording } from '../contact/change-phrase';
import { saidReasons } from '../contact/reason-groups';

type Column = DataColumn<ChangeRow>;

/** True of every row of its value, and said once above the tables. */
const everywhere: readonly Reason[] = ['lying_equation_standing', 'standing_equation_lying', 'age_outside_equation'];

const resultColumn = ({ messages }: Wording): Column => ({
  id: 'result',
  title: messages.client.result,
  value: (row) => (row.result === null ? messages.client.notJudged : messages.common.result[row.result]),
  cell: (row) => <ResultMark result={row.result} otherwise={messages.client.notJudged} />,
});

/** A stopped change has no number: it would be read as one. */
const shownChange = (row: ChangeRow): number | null => (row.guard === 'stop' ? null : row.change);

const shownError = (row: ChangeRow): number | null => (row.guard === 'stop' ? null : row.lsc);

const said = (row: ChangeRow): readonly Reason[] => saidReasons(row).filter((reason) => !everywhere.includes(reason));

const whyColumn = ({ messages, formatters }: Wording): Column => ({
  id: 'why',
  title: messages.client.why,
  printed: false,
  value: (row) => {
    const why =
      said(row).length === 0
        ? messages.common.comparable[row.comparable]
        : formatters.list(said(row).map((reason) => messages.reasons.short[reason]));
    const noted = formatters.list(row.noted.map((rule) => messages.reasons.short[rule]));
    const withNoted = noted === '' ? why : messages.client.withNoted({ why, noted });
    return row.errorGroup === null
      ? withNoted
      : messages.client.errorOfGroup({ why: withNoted, group: row.errorGroup });
  },
});

const dates = ({ messages }: Wording, printed = true): readonly Column[] => [
  { id: 'from', title: messages.client.from, kind: 'date', printed, value: (row) => row.from },
  { id: 'to', title: messages.client.to, kind: 'date', printed, value: (row) => row.to },
];

/** The comparisons of one value: its unit stands in the header. */
export const pairColumns = (measure: ChangeRow['measure'], wording: Wording): readonly Column[] => {
  const words = wording.messages.client;
  const { unit, decimals } = wording.valueWords(measure).measure;
  return [
    ...dates(wording),
    { id: 'purpose', title: words.kind, printed: false, value: (row) => words.purpose[row.purpose] },
    { id: 'change', title: words.change, kind: 'change', unit, digits: decimals, value: shownChange },
    { id: 'error', title: words.error, kind: 'number', unit, digits: decimals, value: shownError },
    resultColumn(wording),
    whyColumn(wording),
  ];
};

/** The latest change of every value, each in its own unit; of those that stand for one change, which counts. */
export const latestColumns = (wording: Wording, shown: readonly ChangeRow['measure'][]): readonly Column[] => {
  const { messages, formatters, valueWords } = wording;
  const words = messages.client;
  const unitOf = (row: ChangeRow) => valueWords(row.measure).measure.unit;
  const digitsOf = (row: ChangeRow) => valueWords(row.measure).measure.decimals;
  return [
    { id: 'value', title: words.value, value: (row) => valueWords(row.measure).title },
    { id: 'unit', title: words.unit, value: (row) => formatters.unit(unitOf(row)) },
    ...dates(wording, false),
    {
      id: 'change',
      title: words.change,
      kind: 'change',
      value: shownChange,
      cell: (row) =>
        row.guard === 'stop' ? messages.table.empty : formatters.change(row.change, unitOf(row), digitsOf(row)),
    },
    {
      id: 'error',
      title: words.error,
      kind: 'number',
      value: shownError,
      cell: (row) =>
        row.lsc === null || row.guard === 'stop'
          ? messages.table.empty
          : formatters.value(row.lsc, unitOf(row), digitsOf(row)),
    },
    resultColumn(wording),
    {
      id: 'same',
      title: words.sameChange,
      printed: false,
      value: (row) => {
        const head = sameChangeAs(row.measure, shown, wording.lean);
        return head === undefined ? null : valueWords(head).name;
      },
      cell: (row) => {
        const head = sameChangeAs(row.measure, shown, wording.lean);
        return head === undefined ? '' : <span className="quiet">{valueWords(head).name}</span>;
      },
    },
    whyColumn(wording),
  ];
};
