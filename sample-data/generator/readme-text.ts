import { format } from 'prettier';
import { type Clinic } from './build-clinic';
import { isoDate, LAST_DAY, weekStart } from './calendar';
import { clientVisits, type ClientVisit } from './checks/client-visit';
import { clinicCounts } from './checks/clinic-counts';
import { plannedTruth, type TrueChange } from './checks/planned-truth';
import { programVisits } from './checks/program-visits';
import { errorNamed, LSC_BANDS, realisedErrors } from './checks/realised-error';
import { errorOfValue } from './checks/study-values';
import { usableReadings } from './checks/usable-reading';
import { VALUES } from './checks/visit-value';
import { PROGRAMS } from './programs';
import { replaySection, type Replay } from './replay-section';
import { LOG_SD } from './device-log';
import { SERVICE_WEEK } from './sites';
import { SEED } from './seed';

const table = (header: readonly string[], rows: readonly (readonly (string | number)[])[]): string =>
  [header, header.map(() => '---'), ...rows].map((row) => `| ${row.join(' | ')} |`).join('\n');

const signed = (value: number, digits = 2): string => {
  const text = Math.abs(value).toFixed(digits);
  return Number(text) === 0 ? text : `${value < 0 ? '−' : '+'}${text}`;
};

const meanAndSd = ({ n, ffmMean, ffmSd, weightMean, weightSd }: TrueChange): (string | number)[] => [
  n,
  `${signed(ffmMean)} (${ffmSd.toFixed(2)})`,
  `${signed(weightMean)} (${weightSd.toFixed(2)})`,
];

const countsSection = ({ rows }: Clinic): string => {
  const counts = clinicCounts(rows.map(({ row }) => row));
  return table(
    ['count', 'n'],
    [
      ['rows in the file', counts.rows],
      ['clients', counts.clients],
      ['routine and repeat visits', counts.routineVisits],
      ['readings at them', counts.routineReadings],
      ['visits of the error study (`precision`)', counts.studyVisits],
      ['readings at them', counts.studyReadings],
      ['readings of the cross-check', counts.crosscheckReadings],
    ],
  );
};

const errorSection = (visits: readonly ClientVisit[]): string => {
  const errors = realisedErrors(visits);
  const kidney = (visit: ClientVisit): boolean => visit.readings[0]?.row.program === 'Kidney nutrition';
  return table(
    [
      'value',
      'unit',
      'PE of one reading',
      'LSC 1:1',
      'LSC 2:2',
      'repositioning alone',
      'df between days',
      'df within',
      'band of LSC 1:1',
      'Kidney: LSC 1:1 (df)',
    ],
    VALUES.map(({ name, unit }) => {
      const error = errorNamed(errors, name);
      const band = LSC_BANDS.find((candidate) => candidate.name === name);
      const own = errorOfValue(name, visits, kidney);
      return [
        name,
        unit,
        error.pe.toFixed(3),
        error.single.toFixed(3),
        error.double.toFixed(3),
        error.repositioningOnly.toFixed(3),
        error.dayDf,
        error.repositioningDf,
        band === undefined ? '' : `${band.low}–${band.high}`,
        `${own.single.toFixed(3)} (${own.dayDf})`,
      ];
    }),
  );
};

const truthSection = (clinic: Clinic, visits: readonly ClientVisit[]): string =>
  table(
    [
      'program',
      'review (weeks)',
      'started n',
      'FFM kg',
      'weight kg',
      'due n',
      'FFM kg',
      'weight kg',
      'seen n',
      'FFM kg',
      'weight kg',
      'with baseline n',
      'FFM kg at the visit',
      'weight kg at the visit',
    ],
    plannedTruth(clinic, programVisits(visits)).map(
      ({ program, week, windowWeeks, started, due, seen, seenAtVisit }) => [
        program,
        `${week} ± ${windowWeeks}`,
        ...[started, due, seen, seenAtVisit].flatMap(meanAndSd),
      ],
    ),
  );

const losersSection = ({ people }: Clinic): string =>
  table(
    ['program', 'clients'],
    PROGRAMS.flatMap(({ name }) => {
      const own = people.filter(({ loser, enrolments }) => loser && enrolments[0]?.program.name === name);
      return own.length === 0 ? [] : [[name, own.map(({ id }) => id).join(', ')]];
    }),
  );

const faultsSection = ({ faults, rows }: Clinic): string =>
  table(
    ['line', 'client', 'fault', 'lands as'],
    faults
      .map(({ kind, what, placed }) => ({ line: rows.indexOf(placed) + 2, kind, what, placed }))
      .sort((a, b) => a.line - b.line)
      .map(({ line, kind, what, placed }) => [line, placed.person, what, kind]),
  );

const unformattedReadme = (clinic: Clinic, replay: Replay): string => {
  const visits = clientVisits(usableReadings(clinic.rows.map(({ row }) => row)));
  return `# The demo clinic: Oremoor

Everything here is invented: the clinic, its people, their names and every reading. This page is generated with the data
(\`npm run sample-data\`, seed ${SEED}); do not edit it. Described up to ${isoDate(LAST_DAY)}, the day of the last visit.

- \`visits.csv\`: the visit export, one row per reading, by day, site, time and client (a row with a mistyped date stands at its true day).
- \`settings.json\`: programs, reviews, Hill's written procedure, the answers to the import's questions, and the device log. Rows set aside stay unanswered.
- \`room\` is a column that the tool does not know: kept, not used.

## Counts

Visits and readings are those left after refused rows, rows set aside and exact duplicates; a client's spellings are one client.

${countsSection(clinic)}

## Realised error

Two components, z at 95 %, from the \`precision\` visits (between days) and all visits with two or more readings except the
cross-check (repositioning); the height of an adult is the median over all the client's visits. Between days the
exported FFM has fewer than 30 df, because only Quay exports it. The last column is Kidney nutrition alone, shown beside and not used.

${errorSection(visits)}

## Planted change, realised

Mean (SD) of the change that is not error. *Started*: everyone whose window has closed. *Due*: of those, without a program that
ended before the window. *Seen*: of those, with a routine or repeat visit in the window. These three are changes from the start
to the planned day, so that people who left can be counted. The last group has a baseline: change from it to the day of the visit.
A planted client moves from reading to reading; where all of its change is artefact it does not move at all.

${truthSection(clinic, visits)}

Who stays is not who started: in weight management those whose own slope lies more than 0.3 kg a month above their group's
mean leave 1.7 times as often, those under 35 years 1.4 times.

## Hidden losers

Eighteen clients lose 0.40 kg of fat-free mass and 0.10° of phase angle a month for nine months, in weight management beyond
the program's own course. At some visit each of them is down more than error in both values, in a strictly comparable pair from baseline.
Those of the Strength and Kidney programs were not seen in the last six weeks: OM-0023 heads the list of the last day.

${losersSection(clinic)}

## Planted clients

Laid down exactly, without noise and without further visits. The generator stops when one of them does not land as planned.
OM-0044's second pair of readings is ${(clinic.resistance0044 - 1).toFixed(1)} and ${(clinic.resistance0044 + 1).toFixed(1)} Ω.

${table(
  ['client', 'program', 'story', 'expected'],
  clinic.planted.map(({ id, program, story, expected }) => [id, program, story, expected]),
)}

## The contact lists, week by week

${replaySection(replay, clinic)}

## The device log

A test body of about 500 Ω and 50 Ω, measured on Mondays: every week on Unit H, every four weeks on Unit Q (SD ${LOG_SD.r} Ω in R and ${LOG_SD.xc} Ω
in Xc, streams of their own). Unit H was serviced in week ${SERVICE_WEEK} (${isoDate(weekStart(SERVICE_WEEK))}) and reads 3 Ω more from then on, on the body and on people.
Nobody has marked the step: results across it are compared, as the figures above assume. The chart of Unit H suggests it; marking
it on Repeatability makes two devices of Unit H, and undo takes it back.

## Faults in the rows

Lines are counted from 1, the header. OM-0171 (two spellings), OM-0101 (sex marker) and OM-0112 (height) are planted clients.

${faultsSection(clinic)}

## Invented beyond the plan

Waist varies by 1.0 cm (SD) between visits. Ethnic groups have no names but letters. Haemodialysis timing does not move the simulated readings.
`;
};

/** The readme of the demo clinic, generated and formatted: what was planted, what was realised, and what the lists made of it. */
export const readmeText = (clinic: Clinic, replay: Replay): Promise<string> =>
  format(unformattedReadme(clinic, replay), { parser: 'markdown', printWidth: 120 });
