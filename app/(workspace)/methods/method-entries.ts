import { catalogueFor, DEFAULT_EQUATIONS, type Catalogue } from '../../../lib/measures/catalogue';
import { citationLine, type Citation } from '../../../lib/measures/citation';
import type { CutOff, CutOffQuantity } from '../../../lib/measures/cut-offs/cut-off';
import { PUBLISHED_CUT_OFFS } from '../../../lib/measures/cut-offs/published-cut-offs';
import type { Equation, Quantity } from '../../../lib/measures/equation';
import { FORMULAS, type Formula } from '../../../lib/measures/formulas';
import type { Measure } from '../../../lib/measures/measure';
import { MEASURE_IDS, type MeasureId } from '../../../lib/measures/measure-id';
import { OWN_COHORT_REFERENCE, PUBLISHED_REFERENCES } from '../../../lib/measures/references/published-references';
import type {
  OwnCohortReference,
  ReferenceSet,
  ReferenceVerification,
} from '../../../lib/measures/references/reference-set';

/** What an entry is about, in the few groups that a person filters by. */
export const ABOUT = ['body', 'electrical', 'fat-free', 'muscle', 'water', 'energy', 'strength'] as const;
export type About = (typeof ABOUT)[number];

/** Something of the catalogue that has an address of its own. */
export type MethodEntry = {
  readonly id: string;
  readonly about: About;
  readonly status: ReferenceVerification;
} & (
  | { readonly kind: 'value'; readonly measureId: MeasureId; readonly measure: Measure | undefined }
  | { readonly kind: 'formula'; readonly formula: Formula }
  | { readonly kind: 'equation'; readonly equation: Equation }
  | { readonly kind: 'reference'; readonly reference: ReferenceSet | OwnCohortReference }
  | { readonly kind: 'cut-off'; readonly cutOff: CutOff }
);

const ABOUT_MEASURE: Readonly<Record<MeasureId, About>> = {
  weight: 'body',
  bmi: 'body',
  waist: 'body',
  waist_height: 'body',
  r: 'electrical',
  xc: 'electrical',
  z: 'electrical',
  phase_angle: 'electrical',
  r_h: 'electrical',
  xc_h: 'electrical',
  h2_r: 'electrical',
  r_specific: 'electrical',
  xc_specific: 'electrical',
  ffm: 'fat-free',
  fm: 'fat-free',
  fat_percent: 'fat-free',
  ffmi: 'fat-free',
  fmi: 'fat-free',
  smm: 'muscle',
  smi: 'muscle',
  asm: 'muscle',
  asmi: 'muscle',
  asm_bmi: 'muscle',
  tbw: 'water',
  ecw: 'water',
  ffm_exported: 'fat-free',
  fm_exported: 'fat-free',
  smm_exported: 'muscle',
  tbw_exported: 'water',
  ecw_exported: 'water',
  phase_angle_exported: 'electrical',
};

const ABOUT_QUANTITY: Readonly<Record<Quantity, About>> = {
  ffm: 'fat-free',
  smm: 'muscle',
  asm: 'muscle',
  tbw: 'water',
  ecw: 'water',
  ree: 'energy',
};

const ABOUT_CUT_OFF: Readonly<Record<CutOffQuantity, About>> = {
  bmi: 'body',
  waist: 'body',
  waist_height: 'body',
  weight_loss: 'body',
  ffmi: 'fat-free',
  fmi: 'fat-free',
  fat_percent: 'fat-free',
  asm: 'muscle',
  asmi: 'muscle',
  asm_bmi: 'muscle',
  asm_percent: 'muscle',
  smi: 'muscle',
  smm_percent: 'muscle',
  grip: 'strength',
  gait: 'strength',
  chair: 'strength',
};

const ABOUT_REFERENCE: Readonly<Record<(ReferenceSet | OwnCohortReference)['kind'], About>> = {
  vector: 'electrical',
  indices: 'fat-free',
  'index-medians': 'fat-free',
  'phase-angle': 'electrical',
  'own-cohort': 'electrical',
};

/** Values that a clinic does not follow are shown as they would be by default. */
const UNFOLLOWED = catalogueFor({ ...DEFAULT_EQUATIONS, geometryCorrected: true });

const values = (catalogue: Catalogue): readonly MethodEntry[] =>
  MEASURE_IDS.map((id) => {
    const from = [catalogue, UNFOLLOWED].find((one) => one.follows(id));
    const measure = from?.measure(id);
    return {
      kind: 'value',
      id: `value-${id.replaceAll('_', '-')}`,
      about: ABOUT_MEASURE[id],
      status: measure?.verification ?? 'definition',
      measureId: id,
      measure,
    };
  });

/** Every entry: values, formulas, equations (published and the clinic's own), reference populations, cut-offs. */
export const methodEntries = (
  catalogue: Catalogue,
  equations: readonly Equation[],
  ownReferences: readonly ReferenceSet[] = [],
): readonly MethodEntry[] => [
  ...values(catalogue),
  ...FORMULAS.map((formula): MethodEntry => ({
    kind: 'formula',
    id: `formula-${formula.id}`,
    about: formula.about,
    status: formula.verification,
    formula,
  })),
  ...equations.map((equation): MethodEntry => ({
    kind: 'equation',
    id: equation.id,
    about: ABOUT_QUANTITY[equation.quantity],
    status: equation.verification,
    equation,
  })),
  ...[OWN_COHORT_REFERENCE, ...PUBLISHED_REFERENCES, ...ownReferences].map((reference): MethodEntry => ({
    kind: 'reference',
    id: `reference-${reference.id}`,
    about: ABOUT_REFERENCE[reference.kind],
    status: reference.kind === 'own-cohort' ? 'definition' : reference.verification,
    reference,
  })),
  ...PUBLISHED_CUT_OFFS.map((cutOff): MethodEntry => ({
    kind: 'cut-off',
    id: `cut-off-${cutOff.id}`,
    about: ABOUT_CUT_OFF[cutOff.quantity],
    status: cutOff.verification,
    cutOff,
  })),
];

/** The work that an entry comes from, where it is one. */
export const citationOf = (entry: MethodEntry): Citation | undefined => {
  switch (entry.kind) {
    case 'value':
      return entry.measure?.equation?.citation;
    case 'formula':
      return undefined;
    case 'equation':
      return entry.equation.citation;
    case 'reference':
      return entry.reference.kind === 'own-cohort' ? undefined : entry.reference.citation;
    case 'cut-off':
      return entry.cutOff.citation;
  }
};

/** Where an entry comes from, in one line; empty where nobody has to be named. */
export const sourceOf = (entry: MethodEntry): string => {
  const citation = citationOf(entry);
  if (citation !== undefined) return citationLine(citation);
  if (entry.kind === 'formula') return entry.formula.source === 'definition' ? '' : entry.formula.source;
  return entry.kind === 'value' && entry.measure !== undefined && entry.measure.source !== 'definition'
    ? entry.measure.source
    : '';
};
