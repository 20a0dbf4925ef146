export type ProgramName =
  'Strength, 65 and over' | 'Weight management' | 'Kidney nutrition' | 'Before surgery' | 'Check-ups only';

/** A normal distribution cut off at its limits. */
export interface Range {
  readonly mean: number;
  readonly sd: number;
  readonly low: number;
  readonly high: number;
}

/** A program of the invented clinic: who is in it, when it sees them and how long they stay. */
export interface Program {
  readonly name: ProgramName;
  /** Clients who begin in it, planted ones included. */
  readonly size: number;
  readonly femaleShare: number;
  readonly age: Range;
  readonly bmi: Range;
  readonly plannedVisitWeeks: readonly number[];
  readonly reviews: readonly { readonly week: number; readonly windowWeeks: number }[];
  /** What the program means to do to weight and to the lean value; null = nobody said. */
  readonly intended: { readonly weight: 'loss' | 'gain' | 'neither' | null; readonly lean: 'up' | 'hold' | null };
  /** SD of body water between days, in litres. */
  readonly waterSd: number;
  /** Hazard of leaving per month, by month since the start. */
  readonly leavingPerMonth: (month: number) => number;
  readonly oedemaRate: number;
  /** The program ends, as finished, with its last planned visit. */
  readonly ends: boolean;
}

export const PROGRAMS: readonly Program[] = [
  {
    name: 'Strength, 65 and over',
    size: 140,
    femaleShare: 0.64,
    age: { mean: 73, sd: 5.5, low: 65, high: 88 },
    bmi: { mean: 27.0, sd: 3.8, low: 19, high: 38 },
    plannedVisitWeeks: [0, 6, 12, 18, 24, 36, 52, 78],
    reviews: [
      { week: 12, windowWeeks: 3 },
      { week: 24, windowWeeks: 3 },
    ],
    intended: { weight: 'neither', lean: 'up' },
    waterSd: 0.35,
    leavingPerMonth: () => 0.018,
    oedemaRate: 0.015,
    ends: true,
  },
  {
    name: 'Weight management',
    size: 190,
    femaleShare: 0.7,
    age: { mean: 46, sd: 12, low: 19, high: 72 },
    bmi: { mean: 36.0, sd: 4.8, low: 29, high: 52 },
    plannedVisitWeeks: [0, 2, 4, 8, 12, 19, 26, 34, 43, 52, 78],
    reviews: [
      { week: 12, windowWeeks: 3 },
      { week: 26, windowWeeks: 3 },
      { week: 52, windowWeeks: 4 },
    ],
    intended: { weight: 'loss', lean: 'hold' },
    waterSd: 0.4,
    leavingPerMonth: (month) => (month < 3 ? 0.05 : 0.03),
    oedemaRate: 0.015,
    ends: true,
  },
  {
    name: 'Kidney nutrition',
    size: 110,
    femaleShare: 0.44,
    age: { mean: 66, sd: 12, low: 32, high: 88 },
    bmi: { mean: 27.6, sd: 4.8, low: 18, high: 42 },
    plannedVisitWeeks: [0, 6, 12, 19, 26, 34, 43, 52, 65, 78, 91],
    reviews: [
      { week: 12, windowWeeks: 3 },
      { week: 26, windowWeeks: 4 },
      { week: 52, windowWeeks: 5 },
    ],
    intended: { weight: 'neither', lean: 'hold' },
    waterSd: 0.6,
    leavingPerMonth: () => 0.016,
    oedemaRate: 0.08,
    ends: true,
  },
  {
    name: 'Before surgery',
    size: 80,
    femaleShare: 0.48,
    age: { mean: 66, sd: 11, low: 38, high: 87 },
    bmi: { mean: 26.4, sd: 4.6, low: 17.5, high: 40 },
    plannedVisitWeeks: [0, 3, 6],
    reviews: [{ week: 6, windowWeeks: 1 }],
    intended: { weight: 'neither', lean: 'up' },
    waterSd: 0.4,
    leavingPerMonth: () => 0.03,
    oedemaRate: 0.015,
    ends: false,
  },
  {
    name: 'Check-ups only',
    size: 80,
    femaleShare: 0.58,
    age: { mean: 52, sd: 14, low: 20, high: 80 },
    bmi: { mean: 26.5, sd: 4.2, low: 18.5, high: 38 },
    plannedVisitWeeks: [0, 13, 26, 39, 52, 65, 78, 91],
    reviews: [
      { week: 26, windowWeeks: 4 },
      { week: 52, windowWeeks: 5 },
    ],
    intended: { weight: null, lean: null },
    waterSd: 0.35,
    leavingPerMonth: () => 0.02,
    oedemaRate: 0.015,
    ends: false,
  },
];

/** Weeks from the start to the operation, and from the operation to the visit after it. */
export const OPERATION_WEEK = 7;
export const WEEKS_AFTER_OPERATION = 14;

export const programNamed = (name: ProgramName): Program => {
  const program = PROGRAMS.find((candidate) => candidate.name === name);
  if (program === undefined) throw new Error(`No program is called ${name}.`);
  return program;
};
