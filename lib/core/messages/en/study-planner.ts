import type { Formatters } from '../../formatters';

/** Words of the planner: how large an error study must be, what it buys, and the sheet to measure with. */
export const studyPlanner = (f: Formatters) => ({
  title: 'Plan an error study',
  lead: 'The same people again on another day within a week, under the same conditions, on the same device, with the staff mixed as in everyday work.',
  people: 'People',
  visits: 'Days each',
  readings: 'Readings each day',
  notNumbers: 'Whole numbers: people and days from 2 up, readings from 1 up.',
  df: (p: { between: number; within: number }) =>
    `That gives ${f.plural(p.between, '# degree of freedom', '# degrees of freedom')} between days and ${f.number(p.within)} of repositioning.`,
  enough: 'Enough: 30 or more degrees of freedom from 15 or more people.',
  notEnough: (p: { people: number; visits: number }) =>
    `Not enough: with ${f.number(p.visits)} days each it takes ${f.number(p.people)} people.`,
  range: (p: { low: string; high: string }) =>
    `The error found would be uncertain by a factor of ${p.low} to ${p.high} (95 % χ² range), and so would every threshold made from it.`,
  buys: (p: { value: string; one: string; planned: string; readings: number; floor: string }) =>
    `With what is known here of ${p.value}: one reading at each visit asks for ${p.one}, ${f.number(p.readings)} readings for ${p.planned}, and no number of readings for less than ${p.floor}, because they shrink repositioning and not the days.`,
  buysOne: (p: { value: string; one: string; floor: string }) =>
    `With what is known here of ${p.value}: one reading at each visit asks for ${p.one}, and no number of readings for less than ${p.floor}, because they shrink repositioning and not the days.`,
  source:
    '30 degrees of freedom (30 people twice, or 15 three times) is what the International Society for Clinical Densitometry asks of a precision study.',
  sheet: 'Study sheet',
  makeSheet: 'Show the sheet',
  hideSheet: 'Hide the sheet',
  print: 'Print the sheet',
  sheetTitle: 'Error study',
  sheetLead:
    'Same device, same hand-electrode position, fasting 8 hours or more, rested, bladder emptied, no exercise or alcohol for 12 hours. For each reading the person steps off (or gets up) and is placed anew. Implanted electronics and pregnancy: the clinic’s rule decides before measuring.',
  columns: {
    person: 'No.',
    client: 'Code',
    date: 'Date',
    reading: 'Reading',
    r: 'R (Ω)',
    xc: 'Xc (Ω)',
    weight: 'Weight (kg)',
    height: 'Height (cm)',
    initials: 'Initials',
  },
  sheetCaption: (p: { people: number; visits: number; readings: number }) =>
    `${f.plural(p.people, '# person', '# people')}, ${f.plural(p.visits, '# day', '# days')}, ${f.plural(p.readings, '# reading', '# readings')} a day`,
});
