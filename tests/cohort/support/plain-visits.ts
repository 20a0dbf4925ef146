import type { ComparabilityRule } from '../../../lib/measures/comparability-rule';
import type { RuleId } from '../../../lib/measures/comparability-rule';
import type { Settings } from '../../../lib/cohort/settings';
import type { Cells } from '../small-clinic';

/** A visit as somebody would put it together by hand from the rows of an export. */
export interface PlainVisit {
  readonly client: string;
  readonly date: string;
  readonly rows: readonly Cells[];
  readonly inSeries: boolean;
  readonly purpose: string;
  readonly age: number | undefined;
  readonly broken: ReadonlySet<RuleId>;
  readonly unknown: ReadonlySet<RuleId>;
  readonly byProcedure: ReadonlySet<RuleId>;
}

export const textOf = (row: Cells, column: string): string => String(row[column] ?? '');
export const numberOf = (row: Cells, column: string): number | undefined =>
  textOf(row, column) === '' ? undefined : Number(row[column]);

/** What an empty cell of these columns stands for. */
const USUAL: Readonly<Record<string, string>> = { frequency_khz: '50', side: 'right', visit_purpose: 'routine' };
export const labelOf = (row: Cells, column: string): string => textOf(row, column) || (USUAL[column] ?? '');

const ageAt = (birth: string, date: string): number | undefined => {
  if (birth === '') return undefined;
  const years = Number(date.slice(0, 4)) - Number(birth.slice(0, 4));
  return date.slice(5) < birth.slice(5) ? years - 1 : years;
};

const columnOf = ({ test }: ComparabilityRule): string | undefined =>
  test.kind === 'below' || test.kind === 'is' || (test.kind === 'differs' && test.unknownMatters)
    ? test.column
    : undefined;

const breaks = ({ test }: ComparabilityRule, row: Cells): boolean => {
  if (test.kind === 'below') return (numberOf(row, test.column) ?? Infinity) < test.limit;
  return test.kind === 'is' && textOf(row, test.column) === test.spoiledBy;
};

const declared = ({ procedures }: Settings, id: RuleId, row: Cells): boolean =>
  procedures.some(
    ({ site, from, to, conditions }) =>
      conditions.includes(id) &&
      (site === null || site === textOf(row, 'site')) &&
      (from === null || from <= textOf(row, 'visit_date')) &&
      (to === null || to >= textOf(row, 'visit_date')),
  );

const siteMonth = (row: Cells): string => `${textOf(row, 'site')} ${textOf(row, 'visit_date').slice(0, 7)}`;

/** For each column the sites and months that fill it in anywhere. */
const recordedWhere = (rows: readonly Cells[], columns: readonly string[]): ReadonlyMap<string, ReadonlySet<string>> =>
  new Map(columns.map((column) => [column, new Set(rows.filter((row) => labelOf(row, column) !== '').map(siteMonth))]));

/** The visits of all rows, client by client in the order of time and file. */
export const plainVisits = (
  rows: readonly Cells[],
  rules: readonly ComparabilityRule[],
  settings: Settings,
): ReadonlyMap<string, readonly PlainVisit[]> => {
  const columns = rules.flatMap((rule) => columnOf(rule) ?? []);
  const recorded = recordedWhere(rows, columns);
  const groups = new Map<string, Cells[]>();
  for (const row of rows) {
    const key = ['client_id', 'visit_date', 'visit_purpose', 'device_id', 'frequency_khz']
      .map((column) => labelOf(row, column))
      .join('|');
    groups.set(key, [...(groups.get(key) ?? []), row]);
  }
  const at50 = new Set(
    rows
      .filter((row) => labelOf(row, 'frequency_khz') === '50')
      .map((row) =>
        ['client_id', 'visit_date', 'visit_purpose', 'device_id'].map((name) => labelOf(row, name)).join('|'),
      ),
  );
  const visitOf = (own: readonly Cells[]): PlainVisit => {
    const [first] = own;
    if (first === undefined) throw new Error('a visit without a reading');
    const which = (keep: (rule: ComparabilityRule, row: Cells) => boolean): Set<RuleId> =>
      new Set(rules.filter((rule) => own.some((row) => keep(rule, row))).map(({ id }) => id));
    const empty = (rule: ComparabilityRule, row: Cells): boolean => {
      const column = columnOf(rule);
      return column !== undefined && labelOf(row, column) === '';
    };
    const unknown = which(
      (rule, row) =>
        empty(rule, row) &&
        !declared(settings, rule.id, row) &&
        recorded.get(columnOf(rule) ?? '')?.has(siteMonth(row)) === true,
    );
    for (const rule of rules) {
      const labels = rule.test.kind === 'differs' && rule.test.unknownMatters ? rule.test.column : undefined;
      if (labels === undefined) continue;
      if (new Set(own.map((row) => labelOf(row, labels)).filter((label) => label !== '')).size > 1)
        unknown.add(rule.id);
    }
    const purpose = labelOf(first, 'visit_purpose');
    const day = ['client_id', 'visit_date', 'visit_purpose', 'device_id'].map((name) => labelOf(first, name)).join('|');
    return {
      client: textOf(first, 'client_id'),
      date: textOf(first, 'visit_date'),
      rows: own,
      purpose,
      inSeries:
        (purpose === 'routine' || purpose === 'repeat') && (labelOf(first, 'frequency_khz') === '50' || !at50.has(day)),
      age: ageAt(textOf(first, 'birth_date'), textOf(first, 'visit_date')),
      broken: which(breaks),
      unknown,
      byProcedure: which((rule, row) => empty(rule, row) && declared(settings, rule.id, row)),
    };
  };
  const clients = new Map<string, PlainVisit[]>();
  for (const own of groups.values()) {
    const made = visitOf(own);
    clients.set(made.client, [...(clients.get(made.client) ?? []), made]);
  }
  for (const visits of clients.values()) visits.sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
  return clients;
};
