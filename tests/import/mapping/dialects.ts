import fc from 'fast-check';
import type { Mapping, MappingQuestion, SourceUnit } from '../../../lib/import/mapping';

/** One visit as measured: figures as whole numbers of tenths, so that what a file must give is known without rounding. */
export interface Visit {
  readonly id: string;
  readonly date: readonly [number, number, number];
  readonly time: readonly [number, number];
  readonly sex: 'F' | 'M' | '';
  readonly height: number;
  readonly weight: number;
  readonly readings: readonly (readonly [number, number])[];
  readonly rested: 'y' | 'n' | '';
  readonly note: string;
}

const NAMES = {
  en: {
    client_id: 'Client no.',
    visit_date: 'Visit date',
    visit_time: 'Time',
    sex: 'Gender',
    height_cm: 'Height',
    weight_kg: 'Body weight',
    r_ohm: 'Resistance',
    xc_ohm: 'Reactance',
    rested: 'Rested',
    note: 'Comments',
  },
  de: {
    client_id: 'Patienten-Nr.',
    visit_date: 'Messdatum',
    visit_time: 'Uhrzeit',
    sex: 'Geschlecht',
    height_cm: 'Größe',
    weight_kg: 'Gewicht',
    r_ohm: 'R',
    xc_ohm: 'Xc',
    rested: 'Ausgeruht',
    note: 'Bemerkung',
  },
  es: {
    client_id: 'Código paciente',
    visit_date: 'Fecha de visita',
    visit_time: 'Hora',
    sex: 'Sexo',
    height_cm: 'Talla',
    weight_kg: 'Peso',
    r_ohm: 'Resistencia',
    xc_ohm: 'Reactancia',
    rested: 'Reposado',
    note: 'Observaciones',
  },
} as const;

type Name = keyof (typeof NAMES)['en'];

const SEX_WORDS = [
  { F: 'F', M: 'M' },
  { F: 'female', M: 'Male' },
  { F: 'w', M: 'm' },
  { F: '2', M: '1' },
  { F: '0', M: '1' },
] as const;
const FLAG_WORDS = [
  { y: 'yes', n: 'no' },
  { y: 'Ja', n: 'Nein' },
  { y: '1', n: '0' },
  { y: 'TRUE', n: 'FALSE' },
  { y: 'done', n: 'not done' },
] as const;
const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** How a file writes its visits. */
export interface Dialect {
  readonly delimiter: ',' | ';' | '\t' | '|';
  readonly encoding: 'utf8' | 'utf8-bom' | 'utf16le' | 'latin1';
  readonly newline: '\n' | '\r\n' | '\r';
  readonly decimal: '.' | ',';
  readonly thousands: '' | ' ' | "'" | 'other';
  readonly dates: 'ymd' | 'dmy' | 'mdy' | 'word';
  readonly together: boolean;
  readonly language: keyof typeof NAMES;
  readonly brackets: '()' | '[]' | ', ' | 'none';
  readonly heightUnit: 'cm' | 'm' | 'in';
  readonly weightUnit: 'kg' | 'lb';
  readonly wide: boolean;
  readonly sexWords: (typeof SEX_WORDS)[number];
  readonly flagWords: (typeof FLAG_WORDS)[number];
  readonly preamble: readonly string[];
  readonly order: readonly number[];
}

export const visitOf: fc.Arbitrary<Visit> = fc.record({
  id: fc.integer({ min: 1, max: 999 }).map((number) => `C-${String(number)}`),
  date: fc.tuple(
    fc.integer({ min: 2019, max: 2025 }),
    fc.integer({ min: 1, max: 12 }),
    fc.integer({ min: 1, max: 28 }),
  ),
  time: fc.tuple(fc.integer({ min: 6, max: 20 }), fc.integer({ min: 0, max: 59 })),
  sex: fc.constantFrom('F', 'M', ''),
  height: fc.integer({ min: 1450, max: 1990 }),
  weight: fc.integer({ min: 400, max: 1900 }),
  readings: fc.array(fc.tuple(fc.integer({ min: 3000, max: 14_000 }), fc.integer({ min: 300, max: 990 })), {
    minLength: 1,
    maxLength: 3,
  }),
  rested: fc.constantFrom('y', 'n', ''),
  note: fc.oneof(
    fc.constant(''),
    fc.constantFrom('two\nlines', 'a "quoted" word', 'comma, semicolon; bar|', "Größe gefragt, d'accord", '1,5', 'é'),
  ),
});

export const dialectOf: fc.Arbitrary<Dialect> = fc.record({
  delimiter: fc.constantFrom(',', ';', '\t', '|'),
  encoding: fc.constantFrom('utf8', 'utf8-bom', 'utf16le', 'latin1'),
  newline: fc.constantFrom('\n', '\r\n', '\r'),
  decimal: fc.constantFrom('.', ','),
  thousands: fc.constantFrom('', ' ', "'", 'other'),
  dates: fc.constantFrom('ymd', 'dmy', 'mdy', 'word'),
  together: fc.boolean(),
  language: fc.constantFrom('en', 'de', 'es'),
  brackets: fc.constantFrom('()', '[]', ', ', 'none'),
  heightUnit: fc.constantFrom('cm', 'm', 'in'),
  weightUnit: fc.constantFrom('kg', 'lb'),
  wide: fc.boolean(),
  sexWords: fc.constantFrom(...SEX_WORDS),
  flagWords: fc.constantFrom(...FLAG_WORDS),
  preamble: fc.subarray(['Export of visits', 'Clinic North, second floor', 'made on Monday']),
  order: fc.array(fc.integer({ min: 0, max: 1000 }), { minLength: 20, maxLength: 20 }),
});

const two = (number: number): string => String(number).padStart(2, '0');

const numberText = (value: number, places: number, { decimal, thousands }: Dialect): string => {
  const [whole = '', part] = value.toFixed(places).split('.');
  const mark = thousands === 'other' ? (decimal === '.' ? ',' : '.') : thousands;
  const grouped = whole.length > 3 ? `${whole.slice(0, -3)}${mark}${whole.slice(-3)}` : whole;
  return part === undefined ? grouped : `${grouped}${decimal}${part}`;
};

const dateText = ([year, month, day]: Visit['date'], { dates }: Dialect): string => {
  switch (dates) {
    case 'ymd':
      return `${String(year)}-${two(month)}-${two(day)}`;
    case 'dmy':
      return `${two(day)}.${two(month)}.${String(year)}`;
    case 'mdy':
      return `${String(month)}/${String(day)}/${String(year)}`;
    case 'word':
      return `${String(day)} ${MONTHS[month - 1] ?? ''} ${String(year)}`;
  }
};

const heading = (name: Name, unit: string, number: string, { language, brackets }: Dialect): string => {
  const base = `${NAMES[language][name]}${number === '' ? '' : ` ${number}`}`;
  if (brackets === 'none' || unit === '') return base;
  return brackets === ', ' ? `${base}, ${unit}` : `${base} ${brackets.charAt(0)}${unit}${brackets.charAt(1)}`;
};

const figures = (visit: Visit, dialect: Dialect): { readonly height: string; readonly weight: string } => ({
  height:
    dialect.heightUnit === 'm'
      ? numberText(visit.height / 1000, 3, dialect)
      : numberText((dialect.heightUnit === 'in' ? inchTenths(visit) : visit.height) / 10, 1, dialect),
  weight: numberText((dialect.weightUnit === 'lb' ? poundTenths(visit) : visit.weight) / 10, 1, dialect),
});

const inchTenths = ({ height }: Visit): number => Math.round(height / 2.54);
const poundTenths = ({ weight }: Visit): number => Math.round(weight * 2.2);

const quotedIn = (delimiter: string, cell: string): string =>
  cell.includes(delimiter) || /["\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;

type Written = readonly (readonly [string, string])[];

const columnsOf = (visit: Visit, readings: Visit['readings'], dialect: Dialect, mostReadings: number): Written => {
  const { height, weight } = figures(visit, dialect);
  const date = dateText(visit.date, dialect);
  const time = `${two(visit.time[0])}:${two(visit.time[1])}`;
  const head = (name: Name, unit = '', number = ''): string => heading(name, unit, number, dialect);
  const values: Written = Array.from({ length: dialect.wide ? mostReadings : 1 }, (_, index) => {
    const [r, xc] = readings[index] ?? [];
    const number = dialect.wide && mostReadings > 1 ? String(index + 1) : '';
    return [
      [head('r_ohm', 'Ohm', number), r === undefined ? '' : numberText(r / 10, 1, dialect)],
      [head('xc_ohm', 'Ohm', number), xc === undefined ? '' : numberText(xc / 10, 1, dialect)],
    ] as const;
  }).flat();
  return [
    [head('client_id'), visit.id],
    ...(dialect.together
      ? ([[head('visit_date'), `${date} ${time}`]] as const)
      : ([
          [head('visit_date'), date],
          [head('visit_time'), time],
        ] as const)),
    [head('sex'), visit.sex === '' ? '' : dialect.sexWords[visit.sex]],
    [head('height_cm', dialect.heightUnit), height],
    [head('weight_kg', dialect.weightUnit), weight],
    ...values,
    [head('rested'), visit.rested === '' ? '' : dialect.flagWords[visit.rested]],
    [head('note'), visit.note],
  ];
};

const shuffled = (cells: Written, { order }: Dialect): Written =>
  cells
    .map((cell, index) => ({ cell, rank: (order[index] ?? 0) * 100 + index }))
    .sort((a, b) => a.rank - b.rank)
    .map(({ cell }) => cell);

const encoded = (text: string, encoding: Dialect['encoding']): Uint8Array => {
  if (encoding === 'utf8-bom') return Buffer.from(`\uFEFF${text}`, 'utf8');
  return Buffer.from(encoding === 'utf16le' ? `\uFEFF${text}` : text, encoding);
};

/** The file that a dialect makes of visits. */
export const writeDialect = (visits: readonly Visit[], dialect: Dialect): Uint8Array => {
  const most = Math.max(...visits.map(({ readings }) => readings.length));
  const rows = visits.flatMap((visit) =>
    (dialect.wide ? [visit.readings] : visit.readings.map((reading) => [reading])).map((readings) =>
      shuffled(columnsOf(visit, readings, dialect, most), dialect),
    ),
  );
  const lines = [
    ...dialect.preamble.map((line) => [line]),
    (rows[0] ?? []).map(([name]) => name),
    ...rows.map((cells) => cells.map(([, cell]) => cell)),
  ];
  const text = lines.map((cells) => cells.map((cell) => quotedIn(dialect.delimiter, cell)).join(dialect.delimiter));
  return encoded(text.join(dialect.newline) + dialect.newline, dialect.encoding);
};

/** What import has to make of the visits: filled canonical cells, one object a reading. */
export const expectedRows = (
  visits: readonly Visit[],
  dialect: Dialect,
): readonly Readonly<Record<string, string>>[] => {
  const most = Math.max(...visits.map(({ readings }) => readings.length));
  return visits.flatMap((visit) =>
    visit.readings.map(([r, xc], index) => {
      const cells = {
        client_id: visit.id,
        visit_date: `${String(visit.date[0])}-${two(visit.date[1])}-${two(visit.date[2])}`,
        visit_time: `${two(visit.time[0])}:${two(visit.time[1])}`,
        sex: visit.sex,
        height_cm: String(
          dialect.heightUnit === 'in'
            ? (inchTenths(visit) * 254) / 1000
            : dialect.heightUnit === 'm'
              ? visit.height / 10
              : (visit.height / 10).toFixed(1),
        ),
        weight_kg:
          dialect.weightUnit === 'lb'
            ? String((poundTenths(visit) * 45_359_237) / 1e9)
            : (visit.weight / 10).toFixed(1),
        r_ohm: (r / 10).toFixed(1),
        xc_ohm: (xc / 10).toFixed(1),
        rested: visit.rested,
        note: visit.note,
        reading: dialect.wide && most > 1 ? String(index + 1) : '',
      };
      return Object.fromEntries(Object.entries(cells).filter(([, cell]) => cell !== ''));
    }),
  );
};

const inverse = (words: Readonly<Record<string, string>>): Readonly<Record<string, string>> =>
  Object.fromEntries(Object.entries(words).map(([to, word]) => [word.toLowerCase(), to]));

/** The mapping with a question answered as somebody would who knows the dialect. */
export const answered = (mapping: Mapping, question: MappingQuestion, dialect: Dialect): Mapping => {
  if (!('to' in question) || !('place' in question)) throw new Error(`not to be asked: ${JSON.stringify(question)}`);
  const { to, place, kind } = question;
  const units: Readonly<Record<string, SourceUnit>> = { height_cm: dialect.heightUnit, weight_kg: dialect.weightUnit };
  const change = {
    'date-order': { dateOrder: dialect.dates === 'mdy' ? ('mdy' as const) : ('dmy' as const) },
    decimal: { decimal: dialect.decimal },
    unit: { unit: units[to] ?? 'Ohm' },
    words: { words: inverse(to === 'sex' ? dialect.sexWords : dialect.flagWords) },
  }[kind];
  return {
    ...mapping,
    columns: mapping.columns.map((column) =>
      column.to === to && column.from[0] === place ? { ...column, ...change } : column,
    ),
  };
};
