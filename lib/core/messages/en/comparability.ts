import type { Formatters } from '../../formatters';

type Setting = 'strict' | 'caution' | 'all';

interface Limit {
  readonly limit: string;
}

/** When a rule is broken, as a sentence; `limit` is the number in force with its unit. */
const broken = {
  device: (_: Limit) => 'Measured on another device.',
  software: (_: Limit) => 'The device had other software. Only for values that the device computed.',
  electrode_path: (_: Limit) => 'Measured along another electrode path.',
  posture: (_: Limit) => 'Lying at one visit, standing at the other.',
  side: (_: Limit) => 'Measured on the other side of the body.',
  frequency: (_: Limit) => 'Measured at another frequency.',
  position: (_: Limit) => 'Another pair of hand electrodes, or other electrode sites.',
  fasting: ({ limit }: Limit) => `Fasted for less than ${limit} at either visit, or at both.`,
  contact: (_: Limit) => 'The contact check failed at either visit.',
  dialysis_timing: ({ limit }: Limit) => `On dialysis, and more than ${limit} apart after the session, or not known.`,
  exercise: ({ limit }: Limit) => `Exercise less than ${limit} before either visit, or both.`,
  alcohol: ({ limit }: Limit) => `Alcohol less than ${limit} before either visit, or both.`,
  large_drink: (_: Limit) => 'A large drink before either visit, or both.',
  bladder: (_: Limit) => 'Bladder not emptied at either visit, or both.',
  rested: (_: Limit) => 'Not rested at either visit, or both.',
  acute_illness: (_: Limit) => 'Acutely ill at either visit, or both.',
  medication: (_: Limit) => 'Medication changed at either visit, or both.',
  menstrual_phase: (_: Limit) => 'Another menstrual phase, where both are recorded.',
  height_source: (_: Limit) => 'Height from another source, where both are recorded.',
  weight_source: (_: Limit) => 'Weight from another source, where both are recorded.',
  height_differs: ({ limit }: Limit) => `An adult’s recorded heights differ by more than ${limit}.`,
};

const grade = {
  no: 'cannot be compared',
  caution: 'compared with a caution',
  note: 'only noted',
  off: 'not looked at',
};

const settingName: Readonly<Record<Setting, string>> = {
  strict: 'comparable, or by procedure',
  caution: '… and with a caution',
  all: 'all pairs',
};

/** Which visits may be compared: rules, the three settings side by side, completeness of the record. */
export const comparability = (f: Formatters) => ({
  title: 'Which visits may be compared',
  finding: (p: { value: string; taking: number; all: number }) => {
    if (p.all === 0) return `No pair of visits holds ${p.value} yet.`;
    const verb = p.taking === 1 ? 'takes' : 'take';
    return `${f.number(p.taking)} of ${f.plural(p.all, 'one pair', '# pairs')} of ${p.value} ${verb} part: comparable, or by procedure.`;
  },
  guarded: (p: { held: number; stopped: number }) =>
    p.held + p.stopped === 0
      ? ''
      : `${f.plural(p.held, 'One pair is held', '# pairs are held')} and ${f.number(p.stopped)} stopped by a guard, whatever their comparability.`,
  opens: (p: { setting: Setting; chosen: boolean }) =>
    p.chosen
      ? `Screens open on the setting this clinic chose: ${settingName[p.setting]}.`
      : `Screens open on the strictest setting that holds pairs: ${settingName[p.setting]}.`,
  opening: 'Screens open on',
  openingOption: { auto: 'the strictest setting that holds pairs', ...settingName },
  openingSaved: 'Kept. New windows open on it.',
  notTransitive: 'Two visits that are each comparable with a third need not be comparable with each other.',
  settings: {
    title: 'Three settings side by side',
    lead: 'The same pairs of visits under each setting. A wider setting adds pairs; it never changes the change or the threshold of one.',
    caption: (p: { value: string; level: number }) => `Results of ${p.value}, error at ${f.number(p.level)} %`,
    setting: 'Setting',
    settingName,
    takingPart: 'Taking part',
    ofPairs: (p: { n: number; all: number }) => `${f.number(p.n)} of ${f.number(p.all)}`,
    up: '▲ up',
    down: '▼ down',
    within: '● within',
    cannotCompare: '○ cannot be compared',
    noThreshold: '– no threshold',
    held: 'Held',
    stopped: 'Stopped',
    countNote:
      'Up and down: more than this clinic’s measurement error. Held and stopped pairs have no result under any setting and are counted apart.',
    everyValue: 'The same for every value',
    value: 'Value',
  },
  coverage: {
    title: 'What the record holds',
    lead: 'How completely conditions stand beside the readings. This is about the record, not about people: whoever writes less down may have measured under the same conditions. Names stand in alphabetical order and are not compared.',
    allCaption: (p: { readings: number }) => `Every condition, ${f.plural(p.readings, '# reading', '# readings')}`,
    oneCaption: (p: { condition: string }) => `One condition: ${p.condition}`,
    by: 'By',
    byOption: { site: 'site', operator: 'operator', month: 'month' },
    condition: 'Condition',
    group: { site: 'Site', operator: 'Operator', month: 'Month' },
    noGroup: { site: 'no site named', operator: 'no operator named', month: 'no date' },
    readings: 'Readings',
    states: {
      met: '✓ met',
      byProcedure: '✓p by procedure',
      notMet: '✕ not met',
      unknown: '? unknown',
      notRecorded: '· not recorded here',
    },
    figureTitle: 'Which conditions does the record tell?',
    figureSubtitle: (p: { readings: number }) =>
      `Each condition over ${f.plural(p.readings, 'one reading', '# readings')}: share met, not met, unknown. The numbers stand in the table below.`,
    figureAxis: (p: { readings: number }) => `Share of ${f.plural(p.readings, '# reading', '# readings')}`,
    parts: {
      met: { sign: '✓', label: 'met' },
      byProcedure: { sign: '✓p', label: 'met by procedure' },
      notMet: { sign: '✕', label: 'not met' },
      unknown: { sign: '?', label: 'unknown' },
      notRecorded: { sign: '·', label: 'not recorded here' },
    },
    share: (p: { n: number; all: number }) => {
      const counts = `${f.number(p.n)} of ${f.number(p.all)}`;
      if (p.all < 20) return counts;
      const share = p.n / p.all;
      if (p.n > 0 && share < 0.005) return `${counts}, under ${f.percent(0.01)}`;
      return p.n < p.all && share >= 0.995 ? `${counts}, over ${f.percent(0.99)}` : `${counts}, ${f.percent(share)}`;
    },
    none: '0',
    note: 'Unknown: others at that site recorded it in that month, this reading did not; such a pair has a caution. Not recorded here: no reading of the site in that month holds it; it grades no pair. For what two visits share or not (device, path, posture, side, frequency, hand-electrode position), met means recorded.',
    procedures: 'Declare a written procedure',
    nothing: 'No reading under these filters.',
  },
  rules: {
    title: 'The rules',
    lead: 'What grades a pair of visits. The defaults are common practice, no source; a clinic may change each grade and limit.',
    atVisits: 'At either visit',
    betweenVisits: 'Between two visits',
    broken,
    grade,
    gradeLabel: (p: { condition: string }) => `Grade: ${p.condition}`,
    gradeShort: 'Grade',
    limitLabel: (p: { condition: string; unit: string }) => `Limit of ${p.condition}, ${p.unit}`,
    limitShort: (p: { unit: string }) => `Limit, ${p.unit}`,
    unit: { h: 'hours', cm: 'cm' },
    limit: (p: { limit: number; unit: 'h' | 'cm' }) => {
      const digits = Math.min(2, (String(p.limit).split('.')[1] ?? '').length);
      const unit = p.unit === 'cm' ? 'cm' : f.plural(p.limit, 'hour', 'hours');
      return `${f.number(p.limit, digits)} ${unit}`;
    },
    byDefault: (p: { grade: keyof typeof grade; limit: string | null }) =>
      `Default: ${grade[p.grade]}${p.limit === null ? '' : `, ${p.limit}`} (common practice, no source)`,
    changed: 'changed by this clinic',
    reset: 'Back to default',
    resetOf: (p: { condition: string }) => `Back to default: ${p.condition}`,
    resetAll: 'All rules to default',
    save: 'Keep these rules',
    saved: 'The rules were changed; every comparison was made again. Undo brings the former rules back.',
    unsaved: (p: { n: number }) =>
      f.plural(p.n, '# rule changed here and not kept yet.', '# rules changed here and not kept yet.'),
    discard: 'Discard',
    wrongLimit: (p: { condition: string }) => `The limit of “${p.condition}” is not a number above 0.`,
    marks:
      'A condition at a visit is met (✓), met by the clinic’s written procedure (✓p), not met (✕), unknown (?) or not recorded here (·). A recorded “no” outweighs a procedure.',
    stops:
      'Pregnancy, fluid collected in the body, dialysis, amputations and growth stop values whatever the rules say; implanted electronics and pregnancy that nobody recorded grade nothing.',
  },
  file: {
    title: 'Settings as a file',
    lead: 'Rules, programs, error source, methods and words as JSON: for another machine of the clinic, or the command line. No answer about a client is in it.',
    save: 'Save the settings as JSON',
    load: 'Read a settings file',
    loaded: (p: { name: string }) => `The settings of ${p.name} are in force. Undo brings the former ones back.`,
    saved: 'The file was handed to the browser’s downloads.',
  },
  link: 'Which visits may be compared, and by which rules',
});
