import type { Formatters } from '../../formatters';

type Sex = 'F' | 'M';

const PEOPLE: Readonly<Record<Sex, string>> = { F: 'women', M: 'men' };
const PEOPLE_FIRST: Readonly<Record<Sex, string>> = { F: 'Women', M: 'Men' };

/** Words of the Vectors screen. The reference is the clinic's own baseline: a place on it is only usual or unusual here. */
export const vectors = (f: Formatters) => ({
  title: 'Vectors',
  people: PEOPLE,
  sexLabel: 'Sex coding of the equations',
  sex: { F: 'Women', M: 'Men' },
  noPoints: (p: { sex: Sex }) => `No vector of ${PEOPLE[p.sex]} under these filters.`,
  findingFar: (p: {
    sex: Sex;
    program: string;
    resistance: 'lower' | 'higher' | null;
    reactance: 'lower' | 'higher' | null;
  }) => {
    const parts = [
      p.resistance === null ? undefined : `${p.resistance} resistance`,
      p.reactance === null ? undefined : `${p.reactance} reactance`,
    ].filter((part) => part !== undefined);
    const words = parts.length === 0 ? '' : `: ${f.list(parts)} for their height`;
    return `${PEOPLE_FIRST[p.sex]} in ${p.program} stand furthest from this clinic’s own baseline${words}.`;
  },
  findingNear: (p: { sex: Sex }) =>
    `Among ${PEOPLE[p.sex]}, no program’s mean vector stands clear of this clinic’s own baseline.`,
  findingPlain: (p: { sex: Sex; n: number }) =>
    `Resistance and reactance for their height of ${f.plural(p.n, 'one person', `# ${PEOPLE[p.sex]}`)}, by program.`,
  lead: (p: { sex: Sex; posture: 'standing' | 'lying' | 'mixed' | 'unknown' }) => {
    const posture = p.posture === 'standing' || p.posture === 'lying' ? `, ${p.posture}` : '';
    return `Resistance and reactance per metre of height at 50 kHz, each client’s latest visit, ${PEOPLE[p.sex]}${posture}.`;
  },
  leadShort: 'What is unusual in this clinic is told here, and nothing about why. The comparisons stand in the tables.',
  leftOut: (p: { noVector: number; noSex: number; otherFrequency: number; stopped: number }) => {
    const parts = [
      [p.noVector, 'without resistance, reactance and height'],
      [p.noSex, 'without a coding F or M'],
      [p.otherFrequency, 'not measured at 50 kHz'],
      [p.stopped, 'whose values are not judged'],
    ] as const;
    const total = parts.reduce((sum, [n]) => sum + n, 0);
    if (total === 0) return '';
    const reasons = parts.flatMap(([n, why]) => (n === 0 ? [] : [`${f.number(n)} ${why}`]));
    return `${f.plural(total, '# person is', '# people are')} not shown: ${f.list(reasons)}.`;
  },
  way: (p: { posture: 'standing' | 'lying' | null; path: string | null }) =>
    `${p.posture ?? 'posture not recorded'}, ${p.path ?? 'electrode path not recorded'}`,
  mixedWays: (p: { ways: readonly { readonly n: number; readonly way: string }[]; programs: readonly string[] }) => {
    const ways = p.ways.map(({ n, way }) => `${f.number(n)} ${way}`).join('; ');
    const mixing =
      p.programs.length === 0
        ? 'each program was measured in one of these ways, so programs are not compared alike'
        : `mixed within ${f.list(p.programs)}`;
    return `Not all were measured the same way: ${ways}; ${mixing}. A difference between ways looks like one between people.`;
  },
  referenceWay: (p: { way: string; otherWays: number }) =>
    `The reference is of those measured ${p.way}; ${f.plural(p.otherWays, '# person measured otherwise is', '# people measured otherwise are')} not in it.`,
  smallEllipses: 'Small ellipses: where each program’s mean vector lies with 95 % confidence.',
  largeEllipses: (p: { n: number }) =>
    `Large ellipses: where 50, 75 and 95 % of new individuals of this clinic’s own baseline would lie on average; n = ${f.number(p.n)}.`,
  provisional: 'Provisional: fewer than 30 people.',
  noReference: (p: { sex: Sex }) => `No reference is drawn: too few ${PEOPLE[p.sex]} have a vector at their baseline.`,
  referenceLabel: (p: { sex: Sex; n: number; provisional: boolean }) =>
    `this clinic’s own baseline, ${PEOPLE[p.sex]}, n = ${f.number(p.n)}${p.provisional ? ', provisional' : ''}`,
  unusual: 'Outside the outermost ellipse means unusual in this clinic, nothing more.',
  postureNote: {
    standing: 'Measured standing. Published references were made lying and differ, so none is shown.',
    lying: 'Measured lying. No outside reference is shown.',
    mixed: 'Measured standing and lying. The two differ, so no outside reference is shown.',
    unknown: 'Posture is not recorded, so no outside reference is shown.',
  },
  figureTitle: 'Resistance and reactance per height',
  pointLabel: (p: { client: string; program: string; date: string; rh: number; xch: number; phase: number }) =>
    `${p.client}, ${p.program}, ${p.date}: R/H ${f.number(p.rh)} Ω/m, Xc/H ${f.number(p.xch, 1)} Ω/m, phase angle ${f.number(p.phase, 1)}°`,
  ownBaseline: 'Own baseline',
  groups: {
    title: 'Mean vectors',
    program: 'Program',
    n: 'n',
    rh: 'R/H',
    xch: 'Xc/H',
    phase: 'φ of the mean',
    rowsWord: 'rows',
    fileName: 'mean-vectors',
    empty: 'No program has a vector under these filters.',
  },
  between: {
    title: 'Programs compared',
    note: 'Hotelling’s T², one sex, latest visit; not adjusted for age or for the number of comparisons. Ellipses that overlap are not the test. Where the two forms disagree, take the unequal one.',
    pair: 'Pair',
    pairName: (p: { a: string; b: string }) => `${p.a} – ${p.b}`,
    n: 'n',
    t2: 'T²',
    f: 'F',
    df1: 'df₁',
    df2: 'df₂',
    p: 'p',
    t2Unequal: 'T², unequal',
    fUnequal: 'F, unequal',
    df2Unequal: 'df₂, unequal',
    pUnequal: 'p, unequal',
    rowsWord: 'pairs of programs',
    d: 'Mahalanobis D',
    fileName: 'vectors-between-programs',
    empty: 'Two programs with at least three people each are needed.',
  },
  paired: {
    title: 'Baseline to latest',
    note: 'Paired T², women and men together: each person is their own control.',
    rh: 'Δ R/H',
    xch: 'Δ Xc/H',
    rowsWord: 'programs',
    fileName: 'vectors-baseline-to-latest',
    empty: 'No program has three people with a baseline and a later vector.',
  },
  points: {
    title: 'Every point',
    client: 'Client',
    date: 'Visit',
    phase: 'Phase angle',
    fileName: 'vector-points',
    rowsWord: 'points',
    search: 'Search a client or program',
  },
  pValue: (p: { value: number }) =>
    p.value < 0.0001 ? `< ${f.number(0.0001, 4)}` : f.number(p.value, p.value < 0.1 ? 4 : 2),
  missing: {
    title: 'There is no impedance in this data.',
    body: 'A vector needs the measured resistance and reactance at 50 kHz, and a height. The files hold none of the three together for any visit.',
    remedy:
      'Export the columns r_ohm and xc_ohm (whole body, in ohm) and height_cm with each reading, then import the file again. Weight and exported values stay as they are.',
  },
});
