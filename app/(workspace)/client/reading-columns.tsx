import { parseIsoDate } from '../../../lib/core/iso-date';
import type { Formatters } from '../../../lib/core/formatters';
import type { Messages } from '../../../lib/core/messages/en';
import type { Ucum } from '../../../lib/core/units';
import type { Session } from '../../../lib/workspace/workspace';
import type { DataColumn } from '../../_ui/data-column';
import type { ReadingAct } from './reading-act';
import { ReadingActions } from './reading-actions';
import { rowChanges } from './row-changes';
import type { ClientRow } from './use-client-rows';

type Column = DataColumn<ClientRow>;

interface ReadingWords {
  readonly messages: Messages;
  readonly formatters: Formatters;
  readonly session: Pick<Session, 'corrections' | 'setAside' | 'keeping'>;
  readonly onAct: (act: ReadingAct, row: ClientRow) => void;
}

export const placeOf = (row: ClientRow, words: Messages['client']): string =>
  words.readings.place({ file: row.file, line: row.row.line, part: row.row.part });

export const dateOf = (row: ClientRow, formatters: Formatters): string => {
  const text = row.cells.visit_date ?? '';
  const date = parseIsoDate(text);
  return date === undefined ? text : formatters.dateShort(date);
};

const numberColumn = (title: string, name: string, unit: Ucum, digits: number): Column => ({
  id: name,
  title,
  unit,
  digits,
  kind: 'number',
  value: ({ cells }) => {
    const text = cells[name] ?? '';
    return text === '' || Number.isNaN(Number(text)) ? null : Number(text);
  },
});

/** The rows as filed: when, the measured values, what became of the row, where it stands, what can be done with it. */
export const readingColumns = ({ messages, formatters, session, onAct }: ReadingWords): readonly Column[] => {
  const words = messages.client.readings;
  const changesOf = ({ row }: ClientRow) => rowChanges(row, session.corrections, session.setAside);
  const status = (row: ClientRow): string => {
    const { corrections } = changesOf(row);
    const said = words.statusWord[row.status] ?? row.status;
    return corrections.length === 0 ? said : `${said}, ${words.correctedMark({ n: corrections.length })}`;
  };
  return [
    {
      id: 'date',
      title: words.date,
      kind: 'date',
      value: ({ cells }) => parseIsoDate(cells.visit_date ?? '') ?? null,
      cell: (row) => <bdi>{dateOf(row, formatters)}</bdi>,
    },
    {
      id: 'purpose',
      title: words.purpose,
      value: ({ cells }) =>
        cells.visit_purpose === undefined || cells.visit_purpose === '' ? words.routine : cells.visit_purpose,
    },
    numberColumn(words.weight, 'weight_kg', 'kg', 1),
    numberColumn(words.height, 'height_cm', 'cm', 1),
    numberColumn(words.r, 'r_ohm', 'Ohm', 1),
    numberColumn(words.xc, 'xc_ohm', 'Ohm', 1),
    { id: 'status', title: words.status, value: status },
    { id: 'where', title: words.where, value: (row) => placeOf(row, messages.client) },
    {
      id: 'actions',
      title: words.actions,
      value: () => null,
      cell: (row) => (
        <ReadingActions
          date={dateOf(row, formatters)}
          place={placeOf(row, messages.client)}
          isSetAside={changesOf(row).setAside !== undefined}
          disabled={!session.keeping.writer}
          onAct={(act) => {
            onAct(act, row);
          }}
        />
      ),
    },
  ];
};
