import type { Formatters } from '../../formatters';
import { importColumns } from './import-columns';

const CAUTION_CHOICES: Readonly<Record<string, string>> = {
  haemo: 'haemodialysis',
  peritoneal: 'peritoneal dialysis',
  ascites: 'ascites',
  heart_failure: 'heart failure',
  cirrhosis: 'cirrhosis',
  infusion: 'an infusion',
};

/** One client: since when, by how much, under which conditions, and what to do the same next time. */
export const client = (f: Formatters) => ({
  title: 'One client',
  none: 'There is no such client in these data',
  noneRemedy:
    'Choose a client from the list. A key belongs to one data set; after another import it may lead elsewhere.',
  toList: 'All clients',
  who: (p: { sex: 'F' | 'M' | null; age: number | null; height: string | null }) =>
    [
      p.sex === null ? 'sex not recorded' : p.sex === 'F' ? 'woman' : 'man',
      ...(p.age === null ? [] : [`${f.number(p.age)} at the last visit`]),
      ...(p.height === null ? [] : [p.height]),
    ].join(', '),
  sinceBaseline: {
    up: (p: { value: string; amount: string; date: string; lsc: string }) =>
      `${p.value} is up ${p.amount} since ${p.date}, more than this clinic’s measurement error in this estimate, ${p.lsc}.`,
    down: (p: { value: string; amount: string; date: string; lsc: string }) =>
      `${p.value} is down ${p.amount} since ${p.date}, more than this clinic’s measurement error in this estimate, ${p.lsc}.`,
    within: (p: { value: string; change: string; date: string; lsc: string }) =>
      `${p.value} has moved by ${p.change} since ${p.date}: within this clinic’s measurement error, ${p.lsc}.`,
    cannot: (p: { value: string; date: string; reasons: string }) =>
      `${p.value} cannot be compared with ${p.date}: ${p.reasons}.`,
    noThreshold: (p: { value: string; change: string; date: string }) =>
      `${p.value} has moved by ${p.change} since ${p.date}. There is no threshold for it yet.`,
    guarded: (p: { value: string; reasons: string }) => `${p.value} is not judged: ${p.reasons}.`,
    none: (p: { value: string }) => `${p.value}: there are no two visits to compare.`,
  },
  sinceBefore: {
    up: (p: { change: string; date: string }) =>
      `Since the visit before (${p.date}) it is up: ${p.change}, more than error.`,
    down: (p: { change: string; date: string }) =>
      `Since the visit before (${p.date}) it is down: ${p.change}, more than error.`,
    within: (p: { change: string; date: string }) => `Since the visit before (${p.date}): ${p.change}, within error.`,
    cannot: (p: { date: string; reasons: string }) =>
      `It cannot be compared with the visit before (${p.date}): ${p.reasons}.`,
    noThreshold: (p: { change: string; date: string }) =>
      `Since the visit before (${p.date}): ${p.change}, no threshold.`,
    guarded: (p: { date: string }) => `Against the visit before (${p.date}) no result is given.`,
  },
  inProgram: (p: { program: string; finding: string }) => `${p.program}: ${p.finding}`,
  errorOf: (p: { group: string | null; by: 'device' | 'site' | 'program' | 'operator' }) =>
    p.group === null
      ? `Judged by everyone’s error, from people unlike these: no ${p.by} with an error of its own holds both visits.`
      : `Judged by the error of ${p.group} alone.`,
  errorOfGroup: (p: { why: string; group: string }) => `${p.why}; error of ${p.group}`,
  provisional: 'The error is provisional: fewer than 30 degrees of freedom, or from fewer than 15 people.',
  notSeenSince: (p: { date: string; weeks: number }) => `Not seen since ${p.date} (${f.number(p.weeks)} weeks).`,
  sexes: (p: { recorded: string; used: string }) =>
    `Sex is recorded as ${p.recorded}. The equations use ${p.used} for every visit until it is decided.`,
  sexWord: { F: 'F', M: 'M' },
  enrolment: (p: { program: string; start: string | null; end: string | null; reason: string | null }) =>
    `${p.program}${p.start === null ? '' : `, from ${p.start}`}${p.end === null ? '' : ` to ${p.end}${p.reason === null ? '' : ` (${p.reason})`}`}`,
  endReason: (p: { code: string }) => p.code.replaceAll('_', ' '),
  baselineLate: (p: { date: string }) => `Baseline ${p.date}, late: after the start.`,
  baselineOn: (p: { date: string }) => `Baseline ${p.date}.`,
  lanes: 'Values over time',
  lanesSubtitle: (p: { visits: number; from: string; to: string }) =>
    `${f.plural(p.visits, 'One visit', '# visits')}, ${p.from} to ${p.to}. The band is the error of one change from baseline; hollow: cannot be compared with baseline; grey: not judged.`,
  lanesCaption: (p: { errors: string; level: number }) =>
    `Error at ${f.number(p.level)} %: ${p.errors}. ✓ met, ✓p met by procedure, ✕ not met, ? unknown, empty: not recorded here. A dotted line: something else changed there.`,
  medicationDates: (p: { dates: readonly string[] }) => `Medication changed by ${f.list(p.dates)}.`,
  laneError: (p: { value: string; lsc: string }) => `${p.value} ± ${p.lsc}`,
  noErrors: 'no threshold',
  leftOut: (p: { n: number }) =>
    f.plural(
      p.n,
      'One visit of the error study or a cross-check is not drawn.',
      '# visits of the error study or a cross-check are not drawn.',
    ),
  breaks: { device: 'other device', position: 'other position', posture: 'other posture', site: 'other site' },
  position: 'position',
  device: 'device',
  terms: 'Where the change comes from',
  termsSubtitle: (p: { change: string; from: string; to: string }) =>
    `${p.change} from ${p.from} to ${p.to}, split by the equation’s terms; they sum to it.`,
  termsCaption: (p: { notation: string; source: string }) => `${p.notation}. ${p.source}.`,
  term: { weight: 'weight', resistance: 'resistance', reactance: 'reactance', height: 'height', age: 'age' },
  noTerms: (p: { value: string }) => `${p.value} has no parts of this kind.`,
  pairs: (p: { value: string }) => `Every comparison of ${p.value}`,
  pairsWord: 'comparisons',
  latest: 'Latest changes of all values',
  latestWord: 'values',
  sameChange: 'Same change as',
  sameChangeNote:
    'Values that show the same change count once: a second one beyond its error confirms nothing. What an equation computes rests on the same resistance, and on weight.',
  sameChangeLine: (p: { value: string; as: string }) =>
    `${p.value} shows the same change as ${p.as} and counts once with it.`,
  from: 'From',
  to: 'To',
  kind: 'Kind',
  purpose: { consecutive: 'visit before', 'baseline-latest': 'baseline', 'baseline-review': 'planned review' },
  change: 'Change',
  error: 'Error',
  result: 'Result',
  why: 'Why',
  withNoted: (p: { why: string; noted: string }) => `${p.why}; noted only: ${p.noted}`,
  value: 'Value',
  unit: 'Unit',
  notJudged: 'not judged',
  held: 'held back',
  cautions: 'What has to be known when reading this',
  recordedCautions: {
    title: 'Cautions recorded for this client',
    show: 'Show the cautions recorded',
    hide: 'Hide the cautions recorded',
    lead: 'From the rows that are used. Only here: on no page that is printed, in no file and on no list.',
    none: 'No row of this client records a caution.',
    failed: 'The rows could not be read.',
    what: (p: { column: string; value: string }) =>
      p.column === 'weeks_after_birth'
        ? `${f.plural(Number(p.value), '# week', '# weeks')} after giving birth`
        : (CAUTION_CHOICES[p.value] ?? importColumns[p.column] ?? p.column),
    line: (p: { what: string; dates: readonly string[] }) => `${p.what}: ${f.list(p.dates)}`,
  },
  missing: 'What is missing',
  missingFor: (p: { needs: string; values: string }) => `Without ${p.needs} these are missing: ${p.values}.`,
  missingVector: 'No vector is drawn: it needs resistance and reactance.',
  inputs: {
    weight_kg: 'weight',
    height_cm: 'height',
    r_ohm: 'resistance',
    xc_ohm: 'reactance',
    waist_cm: 'a waist circumference',
    age_years: 'age',
    sex_male: 'sex',
    ffm_kg: 'an exported fat-free mass',
    fm_kg: 'an exported fat mass',
    smm_kg: 'an exported skeletal muscle mass',
    tbw_l: 'an exported total body water',
    ecw_l: 'an exported extracellular water',
    phase_angle_deg: 'an exported phase angle',
  } as Readonly<Record<string, string>>,
  next: 'Next time, the same as at baseline',
  weightPart: (p: { part: string; change: string }) =>
    `${p.part} of the ${p.change} comes from the change in weight alone.`,
  nextDevice: (p: { device: string }) => `device ${p.device}`,
  nextPosition: (p: { position: string }) => `hand-electrode position ${p.position}`,
  nextPosture: (p: { posture: string }) => p.posture,
  nextSame: 'the same side of the body',
  nextHeight: (p: { height: string }) => `height ${p.height} is kept`,
  nextRest:
    'Fasting for eight hours, rested, bladder emptied; no exercise or alcohol for twelve hours. Two readings after stepping off make the reading steadier.',
  readings: {
    title: 'Readings as filed',
    lead: 'The rows of the clinic’s files. A correction lies over a row; the file stays as it was.',
    word: (p: { n: number }) => f.plural(p.n, 'reading', 'readings'),
    date: 'Visit',
    purpose: 'Purpose',
    routine: 'routine',
    weight: 'Weight',
    height: 'Height',
    r: 'R',
    xc: 'Xc',
    waist: 'Waist',
    status: 'Status',
    where: 'File, line',
    place: (p: { file: string; line: number; part: number }) =>
      `${p.file}, line ${p.line}${p.part === 0 ? '' : `, reading ${f.number(p.part)}`}`,
    actions: 'Change',
    statusWord: {
      accepted: 'used',
      held: 'waiting for a decision',
      duplicate: 'double of another row',
      refused: 'not accepted',
      'set-aside': 'set aside',
    } as Readonly<Record<string, string>>,
    correctedMark: (p: { n: number }) => f.plural(p.n, 'one value corrected', '# values corrected'),
    correct: 'Correct …',
    correctNamed: (p: { date: string; place: string }) => `Correct the reading of ${p.date} (${p.place})`,
    setAside: 'Set aside …',
    setAsideNamed: (p: { date: string; place: string }) => `Set aside the reading of ${p.date} (${p.place})`,
    bringBack: 'Bring back',
    bringBackNamed: (p: { date: string; place: string }) => `Bring back the reading of ${p.date} (${p.place})`,
    failed: 'The rows could not be read.',
  },
  correct: {
    title: (p: { date: string }) => `Correct the reading of ${p.date}`,
    lead: 'The file stays as it is. The new value is used everywhere, stands in the log with your initials, and can be taken back.',
    column: 'Column',
    now: (p: { value: string }) => `Now: ${p.value}`,
    nothing: 'empty',
    to: 'New value',
    unit: (p: { unit: string }) => `in ${p.unit}`,
    asFiled: 'Numbers with a decimal point, dates as 2025-03-04.',
    empty: 'empty: unknown',
    flag: { y: 'yes', n: 'no' },
    reason: 'Reason',
    reasonHint: 'For example: typed twice, read again from the paper sheet.',
    act: 'Correct',
    needsChange: 'The new value is the one that stands there.',
    needsReason: 'Write a reason: it stands beside the value.',
    done: 'The reading was corrected. Undo takes it back.',
  },
  setAside: {
    title: (p: { date: string }) => `Set aside the reading of ${p.date}`,
    lead: 'The reading stays in its file and is used nowhere: in no comparison, no error and no mean. Counts say how many are set aside.',
    reason: 'Reason',
    act: 'Set aside',
    extent: 'What is set aside',
    extents: {
      reading: () => 'This reading',
      visit: (p: { n: number }) => `All ${f.number(p.n)} readings of this visit`,
    },
    needsReason: 'Write a reason: it stands beside the reading.',
    done: (p: { n: number }) =>
      f.plural(
        p.n,
        'The reading was set aside. Undo brings it back.',
        '# readings were set aside. One undo brings them back.',
      ),
  },
  changedHere: 'Corrected and set aside',
  changedNone: 'No reading of this client was corrected or set aside.',
  correctionLine: (p: { column: string; from: string; to: string; date: string }) =>
    `${p.date}, ${p.column}: ${p.to} instead of ${p.from}.`,
  setAsideLine: (p: { date: string }) => `${p.date}: set aside.`,
  reasonLine: (p: { reason: string; when: string; by: string }) =>
    `${p.reason} (${p.when}${p.by === '' ? '' : `, ${p.by}`})`,
  takeBack: 'Take back',
  takeBackNamed: (p: { what: string }) => `Take back: ${p.what}`,
  notesTitle: 'Notes',
  notesLead: 'Kept with the clinic, seen by whoever opens it, in no export but everything about this person.',
  noteLabel: 'New note',
  noteAct: 'Write the note',
  noteNone: 'No note yet.',
  noteDone: 'The note was written. Undo takes it back.',
  noteEmpty: 'Write something first.',
  cancel: 'Cancel',
  columnWord: importColumns,
});
