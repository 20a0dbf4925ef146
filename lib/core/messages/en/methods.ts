import type { Formatters } from '../../formatters';
import { measureNames } from './measure-names';

const QUANTITY = {
  ffm: measureNames.ffm.name,
  smm: measureNames.smm.name,
  asm: measureNames.asm.name,
  tbw: measureNames.tbw.name,
  ecw: measureNames.ecw.name,
  ree: 'resting energy expenditure',
} as const;

/** Words of the Methods screen: which equation computes what, for whom it was made, and what is known of it. */
export const methods = (f: Formatters) => ({
  title: 'Methods',
  index: 'Sections of this page',
  sections: {
    'in-force': 'In force',
    entries: 'All entries',
    agreement: 'Exported against computed',
    compare: 'Compare equations',
    own: 'The clinic’s own equation',
    paragraph: 'For a report or paper',
  },
  quantity: QUANTITY,
  finding: (p: { quantity: keyof typeof QUANTITY; equation: string; inside: number; visits: number }) => {
    const said = QUANTITY[p.quantity];
    const start = `${said.charAt(0).toUpperCase()}${said.slice(1)} is computed by ${p.equation}`;
    if (p.visits === 0) return `${start}; no visit holds what it needs.`;
    const share = p.visits < 20 || p.inside === 0 ? '' : ` (${f.percent(p.inside / p.visits)})`;
    return `${start}; ${f.number(p.inside)} of ${f.plural(p.visits, '# visit lies', '# visits lie')} inside the group it was made for${share}.`;
  },
  lead: (p: { equations: number; computed: number }) =>
    `${f.plural(p.computed, 'One quantity is', '# quantities are')} computed here, out of a catalogue of ${f.plural(p.equations, 'one equation', '# equations')}. Every number names its equation, for whom it was made, and how far the equation was checked.`,
  share: {
    inside: (p: { equation: string; inside: number; visits: number; excluded: boolean }) =>
      `${f.number(p.inside)} of ${f.plural(p.visits, '# visit lies', '# visits lie')} inside the group that ${p.equation} was made for; the others are ${p.excluded ? 'left without a result' : 'marked or held'}.`,
    more: 'Why visits lie outside the equation’s group, on Methods',
  },
  needs: {
    title: 'Fat-free mass cannot be computed from this data: no visit holds what an equation needs.',
    body: 'Equations for impedance need weight, height, the measured resistance and reactance, and a sex coding F or M; vectors need height, resistance and reactance. No visit holds all of them. The catalogue below can be read, and its calculators work with numbers typed in.',
  },
  status: {
    definition: 'a definition',
    'read-in-abstract': 'read in the paper’s abstract',
    'read-in-secondary-text': 'read in a later text that quotes it',
    'from-memory': 'from memory: check against the paper before use',
    'entered-by-clinic': 'entered by the clinic',
    'derived-from-open-data': 'computed from open data by a script of this project',
  },
  statusShort: {
    definition: 'definition',
    'read-in-abstract': 'abstract read',
    'read-in-secondary-text': 'later text read',
    'from-memory': 'from memory',
    'entered-by-clinic': 'entered by the clinic',
    'derived-from-open-data': 'from open data',
  },
  /** Behind a value's name, wherever it stands. */
  mark: {
    equationFromMemory: 'equation from memory',
    fromMemory: 'from memory',
    enteredByClinic: 'equation entered by the clinic',
  },
  inForce: {
    lead: 'One equation for each quantity. Changing it changes the levels of all visits at once; two equations are never mixed in one change. The choice is logged with initials and can be undone.',
    equation: (p: { quantity: string }) => `Equation for ${p.quantity}`,
    none: 'not computed here',
    read: 'Read in a source',
    own: 'Entered by the clinic',
    fromMemory: 'From memory: check against the paper before use',
    otherPath: 'Made for another electrode path: not offered',
    saved: 'Changed for all visits. Undo takes it back.',
    inside: (p: { inside: number; visits: number }) =>
      p.visits === 0
        ? 'No visit holds what it needs.'
        : `${f.number(p.inside)} of ${f.plural(p.visits, '# visit lies', '# visits lie')} inside the group it was made for${p.visits < 20 ? '' : ` (${f.percent(p.inside / p.visits)})`}.`,
    missed: (p: { reasons: readonly { readonly what: string; readonly visits: number }[] }) =>
      `Missed: ${f.list(p.reasons.map(({ what, visits }) => `${what} at ${f.number(visits)}`))}. A visit can miss several.`,
    madeFor: (p: { group: string }) => `Made for ${p.group}.`,
    notJudged: 'Not computed at visits: it serves the calculator alone, and no change of it is followed.',
    notComputed: 'No level and no change of it is shown. Values that the device exported are not touched.',
    details: 'Formula, source and calculator',
    missing: {
      bmi_outside_equation: 'body mass index',
      age_outside_equation: 'age',
      sex_outside_equation: 'sex',
      not_the_equations_path: 'electrode path or frequency (its value is not computed then)',
      lying_equation_standing: 'posture (made lying, measured standing)',
      standing_equation_lying: 'posture (made standing, measured lying)',
    } as Readonly<Record<string, string>>,
    outside: 'Readings outside an equation’s group',
    outsideOptions: { mark: 'marked, and judged', exclude: 'left without a result' },
    outsideNote:
      'Counts for age, sex and posture. A body mass index outside the group always leaves a computed value without a result, and another electrode path leaves it uncomputed.',
    switchOnTitle: (p: { n: number; quantity: string }) =>
      f.plural(p.n, `# more for ${p.quantity}, from memory`, `# more for ${p.quantity}, from memory`),
    switchOnLead:
      'Their figures were not read anywhere when this catalogue was made. Switch one on only with the paper in hand; everything computed with it then carries the mark “equation from memory”.',
    checked: (p: { name: string }) => `Every figure of ${p.name} was compared with the paper`,
    switchOn: (p: { name: string }) => `Switch on ${p.name}`,
    switchOff: (p: { name: string }) => `Switch off ${p.name}`,
    switchedOn: (p: { name: string }) => `${p.name} may be chosen now.`,
    switchedOff: (p: { name: string }) => `${p.name} can no longer be chosen.`,
    isOn: 'switched on by this clinic',
    inUse: 'In force: choose another before switching it off.',
    geometry: 'Resistivity and reactivity, corrected by circumferences',
    geometryNote:
      'From arm, waist and calf circumferences, with factors that are from memory: check against the paper before use.',
    geometryOn: 'Compute both where the three circumferences are known',
  },
  agreement: {
    lead: 'Values that exist twice: computed here, and as the device exported them. Difference = exported minus computed, at each person’s latest visit that holds both.',
    none: 'No visit holds a value twice: exported, and with what the equation needs.',
    tooFew: (p: { n: number; value: string }) =>
      `Only ${f.plural(p.n, 'one person has', '# people have')} ${p.value} in both ways; bias and limits need three or more.`,
    finding: (p: { value: string; bias: string; low: string; high: string; lower: string; upper: string; n: number }) =>
      `Exported ${p.value} differs from the computed by ${p.bias} on average (95 % interval ${p.low} to ${p.high}); for about 95 of 100 people the difference lies between ${p.lower} and ${p.upper} (n\u00A0=\u00A0${f.number(p.n)}).`,
    choose: 'Value',
    figureTitle: (p: { value: string }) => `Does the exported ${p.value} agree with the computed?`,
    figureSubtitle: (p: { n: number }) =>
      `${f.plural(p.n, 'One person', '# people')}, latest visit each. Full line: bias. Band: limits of agreement, bias ± 1.96 SD. Dotted: zero.`,
    meanTitle: (p: { value: string }) => `Mean of exported and computed ${p.value}`,
    differenceTitle: 'Exported minus computed',
    caption: (p: { equation: string }) =>
      `Computed by ${p.equation}. Limits of agreement: Bland JM, Altman DG. Lancet 1986;i:307–310. Agreement of two estimates says nothing about which is right.`,
    byDefinition: 'its definition',
    table: 'Every value that exists twice',
    rowsWord: (p: { n: number }) => f.plural(p.n, 'value', 'values'),
    fileName: 'exported-against-computed',
    columns: {
      value: 'Value',
      unit: 'Unit',
      n: 'n',
      bias: 'Bias',
      interval: 'Bias, 95 % interval',
      lower: 'Lower limit',
      upper: 'Upper limit',
    },
    range: (p: { low: string; high: string }) => `${p.low} to ${p.high}`,
  },
  compare: {
    lead: 'What other equations would say of the same people. Each difference is the other equation minus the one in force, at each person’s latest visit.',
    quantity: 'Quantity',
    fromMemory: 'Also equations from memory, for comparison only',
    forChildren: 'Also equations made for children and adolescents',
    noOthers: 'The catalogue holds no other equation of this quantity that may be used here.',
    noneInForce: (p: { name: string }) => `None is in force for this quantity; compared with ${p.name}.`,
    noValues: 'No visit under these filters holds what these equations need.',
    finding: (p: {
      quantity: string;
      least: string;
      leastName: string;
      most: string;
      mostName: string;
      against: string;
    }) =>
      `Against ${p.against}, other equations put the ${p.quantity} of the same people between ${p.least} (${p.leastName}) and ${p.most} (${p.mostName}) from it, at the median.`,
    findingOne: (p: { quantity: string; median: string; name: string; against: string }) =>
      `Against ${p.against}, ${p.name} puts the ${p.quantity} of the same people ${p.median} from it, at the median.`,
    figureTitle: (p: { quantity: string; against: string }) => `${p.quantity} by other equations, against ${p.against}`,
    figureSubtitle:
      'Circle: median. Thick line: the middle half. Thin line: nine in ten people. Strokes: every person. Upright line: no difference.',
    axis: (p: { against: string }) => `Difference from ${p.against}`,
    caption:
      'People outside the group of either equation are counted in. A difference between equations is no change of a person, and none of them is the truth.',
    people: (p: { n: number; outside: number }) =>
      `${f.plural(p.n, '# person', '# people')}, ${f.number(p.outside)} outside a group`,
    table: 'The same in numbers',
    rowsWord: (p: { n: number }) => f.plural(p.n, 'equation', 'equations'),
    fileName: 'equations-compared',
    columns: {
      equation: 'Equation',
      n: 'n',
      outside: 'Outside a group',
      mean: 'Mean',
      sd: 'SD',
      p5: '5 %',
      median: 'Median',
      p95: '95 %',
      status: 'How far checked',
    },
  },
  paragraph: {
    lead: 'What stands in force, as a paragraph for a report or a paper, with its references.',
    text: 'Save as text',
    bibtex: 'Save references as BibTeX',
    csl: 'Save references as CSL-JSON',
    references: 'References',
    fileName: 'methods-references',
  },
});
