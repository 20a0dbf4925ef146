import { isoDate } from './calendar';
import { type Person } from './person';
import { randomSource, type RandomSource } from './random-source';
import { type Column, type PlacedRow, type VisitRow } from './visit-row';

/** What should become of a faulty row when it is imported. */
export type FaultKind =
  | 'refused'
  | 'set aside'
  | 'accepted with a warning'
  | 'duplicate'
  | 'second spelling'
  | 'birth date'
  | 'height typed wrongly';

/** A fault that was put into the file on purpose, with the row as it stands there. */
export interface RowFault {
  readonly kind: FaultKind;
  readonly what: string;
  readonly placed: PlacedRow;
}

export interface FaultyRows {
  readonly rows: readonly PlacedRow[];
  readonly faults: readonly RowFault[];
}

interface CellFault {
  readonly kind: FaultKind;
  readonly what: string;
  readonly column: Column;
  readonly text: (row: VisitRow) => string;
}

const typed = (kind: FaultKind, column: Column, text: string, what: string): CellFault => ({
  kind,
  what,
  column,
  text: () => text,
});

const beforeBirth = ({ birth_date: birth }: VisitRow): string => `${Number(birth.slice(0, 4)) - 2}-05-06`;

const CELL_FAULTS: readonly CellFault[] = [
  typed('refused', 'r_ohm', '0.0', 'R 0'),
  typed('refused', 'height_cm', '-163.0', 'height −163'),
  typed('refused', 'weight_kg', '0.0', 'weight 0'),
  typed('refused', 'visit_date', '2091-03-02', 'visit dated 2091-03-02'),
  { kind: 'refused', what: 'visit before birth', column: 'visit_date', text: beforeBirth },
  typed('refused', 'xc_ohm', '-48.2', 'Xc negative'),
  typed('set aside', 'r_ohm', '5.0', 'R 5'),
  typed('set aside', 'height_cm', '17.0', 'height 17'),
  typed('set aside', 'weight_kg', '700.0', 'weight 700'),
  typed('accepted with a warning', 'r_ohm', '1020.0', 'R 1,020'),
  typed('accepted with a warning', 'xc_ohm', '204.0', 'Xc 204'),
  typed('accepted with a warning', 'weight_kg', '236.0', 'weight 236'),
  typed('accepted with a warning', 'height_cm', '207.0', 'height 207'),
];

const DUPLICATES = 3;

/** Beside the planted client whose height was typed 10 cm short: six in all. */
const HEIGHT_TYPING_ERRORS = 5;

/** Simulated clients with one program, their routine visits by day. */
interface Candidate {
  readonly person: Person;
  readonly visits: readonly (readonly PlacedRow[])[];
}

const candidatesFrom = (people: readonly Person[], rows: readonly PlacedRow[]): Candidate[] =>
  people
    .filter((person) => !person.loser && person.enrolments.length === 1)
    .map((person) => {
      const own = rows.filter((placed) => placed.person === person.id);
      const days = [...new Set(own.map(({ day }) => day))].sort((a, b) => a - b);
      return { person, visits: days.map((day) => own.filter((placed) => placed.day === day)) };
    })
    .filter(({ visits }) => visits.length >= 5);

/** Single, and neither baseline nor in the window of a review nor the last visit before the end. */
const inconspicuousRow = ({ person, visits }: Candidate): PlacedRow | undefined => {
  const [enrolment] = person.enrolments;
  if (enrolment === undefined) return undefined;
  const { start, end = Infinity, program } = enrolment;
  const inWindow = (day: number): boolean =>
    program.reviews.some(({ week, windowWeeks }) => Math.abs(day - start - 7 * week) <= 7 * windowWeeks);
  const within = visits.filter((visit) => (visit[0]?.day ?? Infinity) <= end);
  const found = within
    .slice(1, -1)
    .find(([first]) => first !== undefined && first.day > start + 7 && !inWindow(first.day));
  return found?.length === 1 ? found[0] : undefined;
};

const swappedDayAndMonth = (birth: string): string | undefined => {
  const [year, month, day] = birth.split('-');
  return year === undefined || month === undefined || day === undefined || day === month || Number(day) > 12
    ? undefined
    : `${year}-${day}-${month}`;
};

const change = (placed: PlacedRow, column: Column, text: string): PlacedRow => ({
  ...placed,
  row: { ...placed.row, [column]: text },
});

/** Puts the faults of the demo clinic into its routine rows; every fault at another client. */
export const withRowFaults = (seed: number, people: readonly Person[], rows: readonly PlacedRow[]): FaultyRows => {
  const random: RandomSource = randomSource(seed, 'row faults');
  let candidates = random.shuffled(candidatesFrom(people, rows));
  const replaced = new Map<PlacedRow, PlacedRow>();
  const faults: RowFault[] = [];
  const copies: PlacedRow[] = [];

  const take = <T>(wanted: (candidate: Candidate) => T | undefined): T => {
    for (const candidate of candidates) {
      const found = wanted(candidate);
      if (found === undefined) continue;
      candidates = candidates.filter((other) => other !== candidate);
      return found;
    }
    throw new Error('No client is left for a fault.');
  };
  const put = (kind: FaultKind, what: string, original: PlacedRow, placed: PlacedRow): void => {
    replaced.set(original, placed);
    faults.push({ kind, what, placed });
  };

  for (const { kind, what, column, text } of CELL_FAULTS) {
    const original = take(inconspicuousRow);
    put(kind, what, original, change(original, column, text(original.row)));
  }
  const spelled = take((candidate) =>
    candidate.person.enrolments[0]?.program.name === 'Check-ups only' ? candidate : undefined,
  );
  const spelling = spelled.person.id.replace('-', '');
  for (const original of spelled.visits.filter((_, index) => index % 2 === 1).flat()) {
    put('second spelling', `${spelled.person.id} as ${spelling}`, original, change(original, 'client_id', spelling));
  }
  const { original: birthRow, date } = take(({ person, visits }) => {
    const swapped = swappedDayAndMonth(isoDate(person.birth));
    const visit = visits[2];
    const original = visit?.length === 1 ? visit[0] : undefined;
    return swapped === undefined || original === undefined ? undefined : { original, date: swapped };
  });
  put(
    'birth date',
    `born ${birthRow.row.birth_date}, once typed ${date}`,
    birthRow,
    change(birthRow, 'birth_date', date),
  );
  for (let count = 0; count < HEIGHT_TYPING_ERRORS; count += 1) {
    const error = (random.pick([-1, 1]) * random.integer(50, 100)) / 10;
    const original = take(({ visits }) => (visits[3]?.length === 1 ? visits[3][0] : undefined));
    const height = (Number(original.row.height_cm) + error).toFixed(1);
    const what = `height ${error > 0 ? '+' : '−'}${Math.abs(error).toFixed(1)} cm`;
    put('height typed wrongly', what, original, change(original, 'height_cm', height));
  }
  for (let count = 0; count < DUPLICATES; count += 1) {
    const original = take(inconspicuousRow);
    const copy = { ...original };
    copies.push(copy);
    faults.push({ kind: 'duplicate', what: 'equal in every column to the row before it', placed: copy });
  }
  return { rows: [...rows.map((placed) => replaced.get(placed) ?? placed), ...copies], faults };
};
