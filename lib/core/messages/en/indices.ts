import type { Formatters } from '../../formatters';

interface PathPart {
  readonly change: string;
  readonly outcome: string | null;
}

const pathPart = ({ change, outcome }: PathPart): string => (outcome === null ? change : `${change} (${outcome})`);

const indicesOf = (client: string | null): string => (client === null ? 'The indices' : `${client}: the indices`);

/** Words of the Indices screen: where people stand by fat-free and fat mass for their height. Nothing is judged here. */
export const indices = (f: Formatters) => ({
  title: 'Indices',
  finding: (p: { judged: number; held: number }) => {
    const judged = f.plural(p.judged, 'One person', `${f.number(p.judged)} people`);
    const shown = `${judged} by fat-free mass and fat mass for their height`;
    if (p.held === 0) return `${shown}.`;
    return `${shown}; ${f.plural(p.held, 'one more is held', '# more are held')}, outside the group the equation was made for.`;
  },
  onlyHeld: (p: { held: number }) =>
    `All ${f.plural(p.held, 'one person is', '# people are')} held: outside the group the equation was made for.`,
  none: 'Nobody has a fat-free mass index under these filters.',
  lead: 'Each client’s latest visit. To the right: more fat-free mass for the height. Upwards: more fat mass. Falling lines: equal body mass index. Rising lines: equal share of fat.',
  forChange:
    'For change only: the equation was made lying and this clinic measures standing, so levels are plotted, not judged, and no cut-off is drawn.',
  levels: 'Levels are plotted, not judged; no cut-off is drawn.',
  equation: (p: { name: string; source: string; mark: string | null }) =>
    `Fat-free mass computed by ${p.name} (${p.source})${p.mark === null ? '' : `, ${p.mark}`}; fat mass = weight − fat-free mass.`,
  held: 'Held',
  heldNote: (p: { n: number }) =>
    f.plural(
      p.n,
      'Grey: # person outside the group the equation was made for or a body mass index outside 16–34 kg/m²; shown, not judged, counted apart.',
      'Grey: # people outside the group the equation was made for or a body mass index outside 16–34 kg/m²; shown, not judged, counted apart.',
    ),
  figureTitle: 'Fat-free mass index and fat mass index',
  pointLabel: (p: { client: string; program: string; date: string; ffmi: number; fmi: number; held: boolean }) =>
    `${p.client}, ${p.program}, ${p.date}: FFMI ${f.number(p.ffmi, 1)}, FMI ${f.number(p.fmi, 1)} kg/m²${p.held ? ', held' : ''}`,
  path: (p: { n: number }) =>
    `Line: the ${f.plural(p.n, 'one visit', '# visits')} of one client; not joined where two visits cannot be compared, hollow where one cannot be compared with the baseline.`,
  pathLabel: (p: { date: string; ffmi: number; fmi: number }) =>
    `${p.date}: FFMI ${f.number(p.ffmi, 1)}, FMI ${f.number(p.fmi, 1)} kg/m²`,
  pathFinding: (p: { client: string | null; from: string; to: string; ffmi: PathPart; fmi: PathPart | null }) =>
    `${p.client === null ? '' : `${p.client}, `}${p.from} to ${p.to}: fat-free mass index ${pathPart(p.ffmi)}${p.fmi === null ? '' : `, fat mass index ${pathPart(p.fmi)}`}.`,
  pathOutcome: {
    up: 'more than error',
    down: 'more than error',
    within: 'within error',
    'no-threshold': 'no threshold yet',
  },
  pathCannot: (p: { client: string | null; date: string; reasons: string }) =>
    `${indicesOf(p.client)} cannot be compared with ${p.date}: ${p.reasons}.`,
  pathGuarded: (p: { client: string | null; reasons: string }) =>
    `${indicesOf(p.client)} are not judged: ${p.reasons}.`,
  pathSingle: (p: { client: string | null }) =>
    p.client === null ? 'There are no two visits to compare.' : `${p.client}: there are no two visits to compare.`,
  pathMissing: 'This client has no visit with weight, height, resistance and reactance.',
  clearPath: 'Show no single client',
  groups: {
    title: 'By program',
    program: 'Program',
    n: 'n',
    heldCount: 'Held',
    ffmi: 'Median FFMI',
    fmi: 'Median FMI',
    rowsWord: 'programs',
    fileName: 'indices-by-program',
    note: 'Medians of the people who are not held; none under 5 people.',
  },
  points: {
    title: 'Every point',
    client: 'Client',
    program: 'Program',
    sex: 'Sex coding',
    date: 'Visit',
    ffmi: 'FFMI',
    fmi: 'FMI',
    bmi: 'BMI',
    held: 'Held',
    rowsWord: 'people',
    search: 'Search a client or program',
    fileName: 'indices',
    yes: 'held',
    no: '',
  },
  missing: {
    title: 'Fat-free mass cannot be computed from this data.',
    body: 'The equation needs weight, height, the measured resistance and reactance, and a sex coding F or M. No visit holds all of them.',
    remedy: 'Export r_ohm and xc_ohm with weight_kg, height_cm and sex, then import the file again.',
  },
});
