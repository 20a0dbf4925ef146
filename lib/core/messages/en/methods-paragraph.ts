import type { Formatters } from '../../formatters';
import type { Ucum } from '../../units';

interface Counted {
  readonly value: string;
  readonly n: number;
}

/** Where percentages begin: below, a count of a few people or visits would look surer than it is. */
const PERCENT_FROM = 20;

/** The sentences of the methods paragraph for a report or a paper. `cite` is a mark such as `[1]`, or nothing. */
export const methodsParagraph = (f: Formatters) => {
  const share = (n: number, of: number): string =>
    of < PERCENT_FROM
      ? `${f.number(n)} of ${f.number(of)}`
      : `${f.number(n)} of ${f.number(of)} (${f.percent(n / of)})`;
  const counted = (all: readonly Counted[], of: number): string =>
    f.list(all.map(({ value, n }) => `${value} (${f.number(n)} of ${f.number(of)} visits)`));
  return {
    title: 'Methods',
    references: 'References',
    topic: {
      data: 'Data',
      measurement: 'Measurement',
      values: 'Values',
      equations: 'Equations',
      error: 'Measurement error',
      comparison: 'Comparison',
      statistics: 'Statistics',
      software: 'Software',
      cautions: 'Cautions',
    },
    invented: 'All people, visits and numbers are invented.',
    data: (p: { readings: number; visits: number; people: number; from: string; asOf: string }) =>
      `The data hold ${f.plural(p.readings, '# reading', '# readings')} at ${f.plural(p.visits, '# visit', '# visits')} of ${f.plural(p.people, '# person', '# people')}, the first on ${p.from}, looked at as of ${p.asOf}.`,
    noImpedance: 'No visit holds resistance and reactance.',
    posture: {
      lying: 'Every visit whose posture was recorded was measured lying.',
      standing: 'Every visit whose posture was recorded was measured standing.',
      mixed: 'Some visits were measured lying and some standing.',
      unknown: 'The posture was not recorded.',
    },
    postureName: { lying: 'lying', standing: 'standing' },
    instrument: (p: { visits: number }) =>
      `Impedance was recorded at ${f.plural(p.visits, '# visit', '# visits')}; the instrument is described as far as the data record it.`,
    recorded: {
      path: (p: { all: readonly Counted[]; of: number }) => `Electrode path: ${counted(p.all, p.of)}.`,
      posture: (p: { all: readonly Counted[]; of: number }) => `Posture: ${counted(p.all, p.of)}.`,
      frequency: (p: { all: readonly Counted[]; of: number }) => `Frequency: ${counted(p.all, p.of)}.`,
    },
    notRecorded: {
      path: 'The electrode path was not recorded.',
      posture: 'The posture was not recorded.',
      frequency: 'The frequency was not recorded.',
      devices: 'The devices were not named.',
    },
    kilohertz: (value: number) => `${String(value)} kHz`,
    devices: (p: { devices: number; n: number; of: number }) =>
      `${f.plural(p.devices, '# device was', '# devices were')} named, at ${f.number(p.n)} of ${f.number(p.of)} visits.`,
    visitMeans:
      'A visit’s value is the mean of its readings; a computed value was computed for each reading first and averaged then.',
    height:
      'Adults have one height for all their visits: the median of their measured heights, or of all recorded ones where none was measured.',
    asRecorded: (p: { names: readonly string[] }) => `As recorded: ${f.list(p.names)}.`,
    byDefinition: (p: { all: readonly { name: string; notation: string }[] }) =>
      `By definition: ${f.list(p.all.map(({ name, notation }) => `${name} (${notation})`))}.`,
    exported: (p: { names: readonly string[] }) =>
      `As the device exported them, by formulas that the export does not state: ${f.list(p.names)}.`,
    fromEquations: (p: { all: readonly { name: string; notation: string }[]; cite: string }) =>
      `From the equations below: ${f.list(p.all.map(({ name, notation }) => (notation === '' ? name : `${name} (${notation})`)))}${p.cite}.`,
    geometryCorrected: (p: { all: readonly { name: string; notation: string }[]; cite: string }) =>
      `Corrected by circumferences, with factors from memory that the clinic switched on: ${f.list(p.all.map(({ name, notation }) => `${name} (${notation})`))}${p.cite}.`,
    quantity: {
      ffm: 'Fat-free mass',
      smm: 'Skeletal muscle mass',
      asm: 'Appendicular skeletal muscle mass',
      tbw: 'Total body water',
      ecw: 'Extracellular water',
      ree: 'Resting energy expenditure',
    },
    equation: (p: { quantity: string; name: string; cite: string; version: number; notation: string; unit: string }) =>
      `${p.quantity} (${p.unit}) was estimated by ${p.name}${p.cite}, version ${f.number(p.version)}: ${p.notation}.`,
    symbols:
      'In the equations H is the height in cm, W the weight in kg, R, Xc and Z are in Ω, FFM and FM in kg and ages in years.',
    sexCoding: {
      maleOne: 'In it, sex is 1 for men and 0 for women.',
      femaleOne: 'In it, sex is 1 for women and 0 for men.',
    },
    verification: {
      'from-memory': 'Its coefficients are from memory; the clinic switched it on.',
      'entered-by-clinic': 'It was entered by the clinic.',
      'read-in-abstract': 'It was read in the paper’s abstract or first page.',
      'read-in-secondary-text': 'It was read in a later text, not in the paper.',
      definition: 'It holds by definition.',
    },
    madeFor: (p: {
      description: string;
      path: string | null;
      posture: 'lying' | 'standing' | null;
      kilohertz: number | null;
    }) =>
      `Made for: ${[
        p.description,
        p.path ?? '',
        p.posture ?? '',
        p.kilohertz === null ? '' : `${String(p.kilohertz)} kHz`,
      ]
        .filter((part) => part !== '')
        .join('; ')}.`,
    inside: (p: { inside: number; visits: number }) =>
      `Of the visits with this value, ${share(p.inside, p.visits)} lie inside the group it was made for, as far as that group is known.`,
    noVisit: 'No visit holds this value.',
    groupUnknown: (p: { visits: number }) =>
      `The group it was made for is not known here, so none of the ${f.plural(p.visits, '# visit', '# visits')} with this value can be said to lie outside it.`,
    outside: {
      mark: 'Readings outside an equation’s ages, sex or posture were kept and marked.',
      exclude: 'Readings outside an equation’s ages, sex or posture were left without a result.',
    },
    ownError: (p: { cite: string }) =>
      `Measurement error was estimated from this clinic’s own repeated measurements, from pooled variances with their degrees of freedom${p.cite}: between days (SD s_b) and on repositioning at one visit (SD s_w).`,
    variance: 'The variance of a change between visits with k₁ and k₂ readings is V = 2·s_b² + s_w²·(1/k₁ + 1/k₂).',
    varianceOfMeans:
      'Where repeated readings earn nothing yet, the variance of a change is twice the mean square between days, whatever k₁ and k₂.',
    varianceOutside:
      'For an error from outside, the variance of a change is V = 2·SD², never less than the clinic’s own repositioning error.',
    threshold: (p: { level: number; always: boolean }) =>
      `The least significant change is LSC = f·√V, two-sided at ${f.number(p.level)} %, with f ${p.always ? 'Student’s t quantile (the normal quantile where 30 or more degrees of freedom come from fewer than 15 people)' : 'the normal quantile from 30 degrees of freedom on, below Student’s t quantile'}; a change at least as large counts as more than measurement error.`,
    cautious:
      'The factor was raised to the one-sided 95 % upper limit of the precision error, so that an error that was estimated too small calls fewer unchanged people changed.',
    errorByGroup: (p: { by: 'device' | 'site' | 'program' | 'operator' }) =>
      `A pair whose two visits lie in one ${p.by} with 30 or more degrees of freedom from 15 or more people of its own was judged by the error of that ${p.by}, every other pair by the error of all; the thresholds below are those of all.`,
    relative: (p: { name: string }) => `${p.name} (judged by its logarithm, upwards)`,
    oneReading: 'The thresholds below are those for one reading at each end, with the χ² interval of the error.',
    tier: {
      own: (p: { rows: readonly string[] }) => `Own between-day error: ${p.rows.join('; ')}.`,
      entered: (p: { rows: readonly string[] }) =>
        `Between-day error entered by the clinic, not estimated from these data: ${p.rows.join('; ')}.`,
      published: (p: { rows: readonly string[]; cite: string; sd: number; people: number; df: number }) =>
        `Published between-day error of the impedance, which is not this clinic’s own${p.cite}, SD ${f.quantity(p.sd, 'Ohm', 0)} (${f.plural(p.people, '# person', '# people')}, ${f.plural(p.df, '# degree', '# degrees')} of freedom), provisional: ${p.rows.join('; ')}.`,
      repositioning: (p: { rows: readonly string[] }) =>
        `Repositioning error alone, a lower limit, so no change was called more than error: ${p.rows.join('; ')}.`,
      none: (p: { names: readonly string[] }) => `No threshold, so no change was judged: ${f.list(p.names)}.`,
    },
    row: (p: {
      name: string;
      unit: Ucum;
      decimals: number;
      lsc: number;
      interval: readonly [number, number] | null;
      pe: number;
    }) => {
      const size = (value: number): string => f.quantity(value, p.unit, p.decimals);
      const range =
        p.interval === null ? '' : ` (${f.value(p.interval[0], p.unit, p.decimals)} to ${size(p.interval[1])})`;
      return `${p.name}, LSC ${size(p.lsc)}${range}, precision error ${size(p.pe)}`;
    },
    /** Rows that rest on the same study, and what they rest on. */
    restingOn: (p: {
      rows: readonly string[];
      factor: number;
      df: number;
      people: number | null;
      provisional: boolean;
      earnsNothing: boolean;
    }) =>
      `${p.rows.join('; ')} (${[
        `${p.rows.length > 1 ? 'each with f' : 'f'} ${f.number(p.factor, 2)}`,
        f.plural(p.df, '# degree of freedom', '# degrees of freedom'),
        ...(p.people === null ? [] : [f.plural(p.people, '# person', '# people')]),
        ...(p.earnsNothing ? ['repeated readings earn nothing yet'] : []),
        ...(p.provisional ? ['provisional'] : []),
      ].join(', ')})`,
    atOwn: (p: { name: string }) =>
      `${p.name}, the impedance’s threshold carried over to it at each person’s own values (resistance only)`,
    noRows: 'No measurement error was given for the values of this report.',
    pairs: (p: { value: string; admitted: number; all: number }) =>
      `Of all pairs of a baseline and a latest visit that hold ${p.value}, ${share(p.admitted, p.all)} take part.`,
    noPairs: (p: { value: string }) => `No pair of a baseline and a latest visit holds ${p.value}.`,
    setting: {
      strict: 'Pairs took part whose conditions are comparable, or comparable by the clinic’s written procedure.',
      caution:
        'Pairs took part that are comparable, comparable by the clinic’s written procedure, or comparable with a caution.',
      all: 'All pairs took part, those that cannot be compared included.',
    },
    ruledOut: (p: { conditions: readonly string[] }) => `Cannot be compared without: ${f.list(p.conditions)}.`,
    cautioned: (p: { conditions: readonly string[] }) => `A caution without: ${f.list(p.conditions)}.`,
    notLookedAt: (p: { conditions: readonly string[]; readings: number }) =>
      `Not recorded at any of ${f.plural(p.readings, '# reading', '# readings')} and therefore not looked at: ${f.list(p.conditions)}.`,
    byProcedure: (p: { all: readonly { condition: string; n: number }[]; readings: number }) =>
      `Taken as met by the clinic’s written procedure: ${f.list(p.all.map(({ condition, n }) => `${condition} (${f.number(n)} of ${f.number(p.readings)} readings)`))}.`,
    guards:
      'Composition was not judged under 18 years or where recorded cautions rule an estimate out, nor, where computed, along another electrode path than its equation’s.',
    bodyMass: (p: { cite: string }) =>
      `Nor was it judged outside a body mass index of 16–34 kg/m²${p.cite}, nor, where computed, outside that of its equation’s group.`,
    meanChanges:
      'Mean changes of programs carry 95 % intervals by Student’s t on n − 1 degrees of freedom, one pair per enrolment, n printed beside each.',
    vectors: (p: { cite: string; citeUnequal: string }) =>
      `Vectors are resistance and reactance per height at 50 kHz${p.cite}: changes within people by Hotelling’s paired T², groups of one sex by the two-sample T² and its form for unequal covariances${p.citeUnequal}; ellipses are of prediction or of a mean’s confidence, as labelled.`,
    agreements: (p: { all: readonly { name: string; n: number }[]; cite: string }) =>
      `Exported minus computed values, one latest visit per person, are given as bias with limits of agreement, bias ± 1.96 SD${p.cite}: ${f.list(p.all.map(({ name, n }) => `${name} (n ${f.number(n)})`))}.`,
    software: (p: { version: string; data: string }) => `Computed with Driftline ${p.version}; data version ${p.data}.`,
    caution:
      'These are estimates from electrical measurements; they support and never replace examination and judgement by a licensed professional and the local rules.',
    waterOrMuscle: 'One pair of visits cannot tell a change of water from a change of muscle.',
    fastWeightLoss: (p: { cite: string }) =>
      `Where weight falls fast, the water share of lean tissue changes, and a lean change is to be read with care${p.cite}.`,
    lyingEquation: (p: { names: readonly string[] }) =>
      `Made lying and used on standing measurements, ${f.list(p.names)} ${p.names.length === 1 ? 'serves' : 'serve'} for changes, not for levels.`,
    notEffect:
      'A change among the people who were seen is not an effect of a program: nobody was assigned to one by chance.',
    equationCaution: (p: { name: string; caution: string }) => `${p.name}: ${p.caution}`,
    reference: (p: { number: number; line: string; note: string }) =>
      `[${f.number(p.number)}] ${p.line}${p.note === '' ? '' : ` (${p.note.replace(/\.$/u, '')})`}`,
  };
};

export type MethodsWords = ReturnType<typeof methodsParagraph>;
