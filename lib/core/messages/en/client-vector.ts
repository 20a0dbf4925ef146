import type { Formatters } from '../../formatters';

/** One client's vectors, indices and how far a change may be relied on. */
export const clientVector = (f: Formatters) => ({
  title: 'Vector path',
  subtitle: (p: { level: number; drawn: boolean }) =>
    p.drawn
      ? `Resistance and reactance per metre of height at 50 kHz. The ellipse: where the latest would lie by error alone, ${f.number(p.level)} %, around the baseline.`
      : 'Resistance and reactance per metre of height at 50 kHz.',
  beyond: 'The vector has moved further from its baseline than error alone explains.',
  within: 'The vector has moved no further from its baseline than error alone explains.',
  cannot: (p: { reasons: string }) => `The latest vector cannot be compared with the baseline: ${p.reasons}.`,
  noThreshold:
    'Whether the vector moved by more than error is not known: the clinic’s own study needs ten pairs of days with both values.',
  stopped: 'The vector is not judged: see what has to be known.',
  single: 'There is only one vector so far.',
  none: 'No vector: no visit holds resistance and reactance at 50 kHz.',
  apart: 'Both values are judged together; that may differ from the results of each alone.',
  provisional: 'Provisional: fewer than 30 degrees of freedom, or from fewer than 15 people.',
  notJoined: 'Visits that cannot be compared are not joined; hollow: not comparable with the baseline.',
  error: (p: { d2: string; threshold: string; df: number; people: number }) =>
    `Δᵀ V⁻¹ Δ = ${p.d2} against ${p.threshold} (${f.number(p.df)} degrees of freedom from ${f.plural(p.people, 'one person', '# people')}).`,
  ellipse: 'this client’s own error',
  fileName: 'client-vector-path',
  pointLabel: (p: { date: string; rh: number; xch: number; phase: number }) =>
    `${p.date}: R/H ${f.number(p.rh, 1)}, Xc/H ${f.number(p.xch, 1)} Ω/m, phase angle ${f.number(p.phase, 2)}°`,
  split: {
    title: 'Water or cell mass?',
    water: 'The fall in the lean estimate fits less water.',
    cell: 'The fall in the lean estimate fits cell mass.',
    neither: 'Water or cell mass: cannot tell.',
    notAsked: 'No lean value fell by more than error, so the question does not arise.',
    unasked: 'No answer is given here.',
    parts: (p: { fluid: string; fluidLsc: string; cell: string; cellLsc: string; n: number }) =>
      `Fluid axis ${p.fluid} (error ± ${p.fluidLsc}), cell axis ${p.cell} (error ± ${p.cellLsc}), in standard deviations of ${f.plural(p.n, 'one other person', '# other people')} of the same sex coding at their first baseline here. Longer and steeper vectors are positive.`,
    learnt: (p: { degrees: number }) =>
      `The axes are fixed; between days, unchanged people move ${f.number(Math.abs(p.degrees))}° from the fluid axis in this clinic.`,
    assumed: 'The axes are assumed: too few pairs of days to learn how unchanged people move here.',
    caution:
      'One pair of visits cannot tell water from muscle. Measure again rested and fasting before acting; warm skin or salt can move it the other way.',
  },
  index: {
    title: 'Index path',
    subtitle:
      'To the right: more fat-free mass for the height. Upwards: more fat mass. Falling lines: equal body mass index.',
    stopped: (p: { n: number }) =>
      f.plural(
        p.n,
        'One visit is left out: composition is not judged there.',
        '# visits are left out: composition is not judged there.',
      ),
    held: 'At least one visit lies outside the group the equation was made for, or outside a body mass index of 16–34 kg/m²: read no level there.',
    fileName: 'client-index-path',
  },
  confidence: {
    title: 'How sure is the direction?',
    fromError: (p: { value: string; share: string; df: number }) =>
      `${p.value}: ${p.share} confidence from error alone that the direction is the one shown (${f.number(p.df)} degrees of freedom). It is never below 50 % and does not know how this client came to be looked at.`,
    atMost: (p: { share: string }) => `over ${p.share}`,
    beside: (p: { program: string; people: number; guess: string; sd: string; share: string; mean: string }) =>
      `Beside it, ${f.number(p.people)} people in ${p.program} changed by ${p.mean} on average. Best guess for a typical person with this reading: ${p.guess}, give or take ${p.sd}; ${p.share} of such people moved in this direction.`,
    besideNote:
      'A guess about a typical person with this reading, given how much of the spread between people is measurement error; not a correction of this one.',
    noBeside: 'No guess beside other people: under 30 in the program, or error explains all their spread.',
  },
});
