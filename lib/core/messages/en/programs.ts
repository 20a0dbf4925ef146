import type { Formatters } from '../../formatters';

/** Names beyond this number are counted, not listed. */
const MOST_NAMES = 3;

const COMPARED = {
  'baseline-latest': 'Mean change from baseline to the latest visit',
  consecutive: 'Mean change from each visit to the next',
  'baseline-review': 'Mean change from baseline to the planned review',
} as const;

const VISIT = {
  closest: 'closest',
  'closest-comparable': 'closest comparable',
  'first-in-window': 'first in window',
} as const;

/** Words of the Programs screen. Change is told among people seen; nothing here says why it came about. */
export const programs = (f: Formatters) => {
  const inPrograms = (names: readonly string[], of: number): string =>
    names.length <= MOST_NAMES
      ? f.list(names.map((name) => `in ${name}`))
      : `in ${f.number(names.length)} of ${f.number(of)} programs`;
  const weekNumber = (week: number): string => f.number(week, Number.isInteger(week) ? 0 : 1);
  return {
    title: 'Programs',
    none: 'No program holds a pair of visits under these filters.',
    nothingComparable: (p: { value: string }) => `No change of ${p.value} could be compared yet in any program.`,
    finding: (p: { value: string; rose: readonly string[]; fell: readonly string[]; unclear: readonly string[] }) => {
      const total = p.rose.length + p.fell.length + p.unclear.length;
      const parts = [
        p.rose.length === 0 ? undefined : `rose ${inPrograms(p.rose, total)}`,
        p.fell.length === 0 ? undefined : `fell ${inPrograms(p.fell, total)}`,
      ].filter((part) => part !== undefined);
      const beginning = `Among the people compared, mean ${p.value}`;
      if (parts.length === 0) {
        const where = p.unclear.length === 1 ? `in ${f.list(p.unclear)}` : 'in any program';
        return `${beginning} neither clearly rose nor clearly fell ${where}.`;
      }
      const rest = p.unclear.length <= MOST_NAMES ? inPrograms(p.unclear, total) : 'in the others';
      return `${[`${beginning} ${parts.join('; it ')}`, ...(p.unclear.length === 0 ? [] : [`${rest} the interval holds zero`])].join('; ')}.`;
    },
    oneFinding: (p: { program: string; value: string; mean: number; size: string; n: number }) => {
      const people = f.plural(p.n, 'the one person compared', 'the # people compared');
      if (p.mean === 0) return `In ${p.program}, mean ${p.value} stayed level among ${people}.`;
      return `In ${p.program}, mean ${p.value} ${p.mean > 0 ? 'rose' : 'fell'} by ${p.size} among ${people}.`;
    },
    /** The interval of a mean is always one of 95 %, whichever level one person's error is taken at. */
    lead: (p: { purpose: keyof typeof COMPARED; lsc: string | null; week?: number | undefined }) => {
      const week = p.week === undefined ? '' : ` of week ${weekNumber(p.week)}`;
      const band =
        p.lsc === null
          ? 'There is no threshold for one person yet, so no band is drawn.'
          : `The pale band is the error of one person, ±${p.lsc}: single people inside it have not changed by more than error.`;
      return `${COMPARED[p.purpose]}${week}, with its ${f.number(95)} % interval. ${band}`;
    },
    review: {
      label: 'Planned review',
      week: (p: { week: number }) => `week ${weekNumber(p.week)}`,
      visitLabel: 'Visit of the window',
      visit: VISIT,
      sensitivity: (p: { visit: keyof typeof VISIT }) => `sensitivity: ${VISIT[p.visit]}`,
      taken: {
        closest: 'Of all visits in the window, the closest to the target is taken, then judged.',
        'closest-comparable':
          'Of the visits in the window, the closest comparable one is taken; where there is none, the closest with a caution, else the closest.',
        'first-in-window': 'The first visit in the window is taken, then judged.',
      },
      seenOfDue:
        'Seen: of those due; who was seen early is in neither. Median day: of those seen, after the start, with the quartiles.',
    },
    notCompared: 'Change among people seen; not compared with people who did not take part.',
    regression: 'People picked for an extreme first value tend to move back on their own.',
    consecutiveNote:
      'One person gives several such pairs and they share visits, so these intervals look narrower than they are.',
    orderNote: 'In order of name, never of size.',
    byError: (p: { level: number; low: number; high: number; df: number }) =>
      `With nobody changed, error alone would call about ${f.number((100 - p.level) / 2, 1)} in 100 up and as many down; ` +
      `both together between ${f.number(p.low)} and ${f.number(p.high)} in 100 (${f.number(p.df)} degrees of freedom).`,
    errorByGroup:
      'The band and the share by error alone are everyone’s; a pair of a group with an error of its own is counted by that one (Repeatability). A program judged by several errors is not held against error alone.',
    lowerLimit:
      'The threshold here holds only the error of stepping off and on again: no change is called more than error.',
    heldNote: (p: { n: number }) =>
      f.plural(
        p.n,
        '# change is held: the body mass index is not known or lies outside the group the equation was made for, so it is not judged. Where it is not known, height_cm and weight_kg in the export make it known.',
        '# changes are held: the body mass index is not known or lies outside the group the equation was made for, so they are not judged. Where it is not known, height_cm and weight_kg in the export make it known.',
      ),
    stoppedNote: (p: { n: number }) =>
      f.plural(p.n, '# change is stopped by a guard.', '# changes are stopped by a guard.'),
    purposeLabel: 'Which visits are compared',
    purpose: {
      'baseline-latest': 'Baseline to latest',
      'baseline-review': 'Baseline to review',
      consecutive: 'Visit to visit',
    },
    figureTitle: (p: { value: string }) => `Mean change of ${p.value} by program`,
    threshold: (p: { lsc: string; tier: string; df: number }) =>
      `Error of one person: ±${p.lsc} (${p.tier}, ${f.number(p.df)} degrees of freedom).`,
    axis: (p: { value: string }) => `Mean change, ${p.value}`,
    nText: (p: { compared: number; pairs: number }) => `${f.number(p.compared)} of ${f.number(p.pairs)} pairs`,
    summary: {
      none: 'No two visits of one person yet.',
      noReview: 'Nobody has a baseline and this review.',
      nothingCompared: (p: { pairs: number }) => `None of ${f.plural(p.pairs, '# pair', '# pairs')} could be compared.`,
      tooFew: 'Too few compared for an interval.',
      mean: (p: { mean: string; low: string; high: string; direction: 'rose' | 'fell' | 'unclear' }) => {
        const interval = `${p.mean} (${p.low} to ${p.high})`;
        if (p.direction === 'unclear') return `${interval} on average; the interval holds zero.`;
        return `${interval} on average: ${p.direction === 'rose' ? 'up' : 'down'} among those compared.`;
      },
    },
    columns: {
      program: 'Program',
      clients: 'People',
      pairs: 'Pairs',
      compared: 'Compared',
      mean: 'Mean change',
      low: `${f.number(95)} % interval from`,
      high: `${f.number(95)} % interval to`,
      due: 'Due',
      seen: 'Seen',
      day: 'Median day',
      asMeant: 'as intended',
      up: '▲ up',
      down: '▼ down',
      within: '● within',
      cannotCompare: '○ cannot be compared',
      noThreshold: '– no threshold',
      held: 'held',
      stopped: 'stopped',
    },
    countsNote:
      'Up, down and within: of the pairs that were judged. The others: of all pairs. A percentage stands only where 20 or more are counted.',
    asMeantNote:
      'As intended: of the pairs judged in programs whose settings say what is meant for this value; a client’s own entry for the weight goes first. Meant to fall or rise: more than error that way. Meant not to fall: not down by more than error. Meant to stay level: within error. A count, not an effect.',
    notSaid: '–',
    quartiles: (p: { q1: string; q3: string }) => `${p.q1}–${p.q3}`,
    count: (p: { n: number; of: number }) => `${f.number(p.n)}/${f.number(p.of)}`,
    share: (p: { n: number; of: number }) => (p.of >= 20 ? f.percent(p.n / p.of) : undefined),
    tableTitle: 'Every program, in numbers',
    rowsWord: 'programs',
    fileName: 'programs',
    byErrorTitle: 'Against error alone',
    byErrorFile: 'programs-against-error',
    byErrorColumns: {
      judged: 'Judged',
      pUp: 'p, so many up',
      pDown: 'p, so many down',
      pUpAgainstDown: 'p, up against down',
      pSpread: 'p, spread',
      slope: 'Slope by error',
      trueSd: 'SD without error',
    },
    p: (p: { p: number }) => (p.p < 0.001 ? `< ${f.number(0.001, 3)}` : f.number(p.p, 3)),
    noP: '–',
    byErrorNote:
      'How likely results like these are where nobody changed. So many up (down): by error alone, with this clinic’s error known only from its study. ' +
      'Up against down: whatever the error is (exact sign test). Spread: whether changes vary more than error explains (F test); SD without error is what is left. ' +
      'Slope by error: people who began 1 above the program’s mean come back by about this much without any change. ' +
      'One change of each person; not adjusted for several programs or values; programs are not randomised.',
  };
};
