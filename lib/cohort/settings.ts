import { z } from 'zod';
import { parseIsoDate } from '../core/iso-date';
import { RULE_IDS } from '../measures/comparability-rule';
import { MEASURE_IDS } from '../measures/measure-id';
import { ownEquationSchema } from '../measures/own-equation';
import { ownReferenceSchema } from '../measures/references/own-reference';
import { contactSettingsSchema } from './settings-parts/contact-settings';
import { deviceSettingsSchema } from './settings-parts/device-settings';
import { errorStudySettingsSchema } from './settings-parts/error-study-settings';
import { enrolmentSchema } from './settings-parts/enrolment-settings';
import { programSchema } from './settings-parts/program-settings';

const isoDate = z.string().refine((text) => parseIsoDate(text) !== undefined, 'not a date YYYY-MM-DD');
const measureId = z.enum(MEASURE_IDS);
const ruleId = z.enum(RULE_IDS);

/** A clinic's written procedure: these conditions were met at this site from … to …, unless a row says no. */
const procedureSchema = z.strictObject({
  site: z.string().nullable(),
  from: isoDate.nullable(),
  to: isoDate.nullable(),
  conditions: z.array(ruleId).min(1),
  initials: z.string(),
});

const enteredErrorSchema = z.strictObject({
  measure: measureId,
  /** SD of one reading between days, in the value's unit. */
  betweenDaySd: z.number().positive(),
  df: z.number().int().min(1),
});

const equationId = z.string().min(1);

const chosen = (id: string | null) => equationId.nullable().default(id);

/** What a clinic switched on or off against the default of each entry. */
const switchesSchema = z
  .strictObject({ on: z.array(equationId).default([]), off: z.array(equationId).default([]) })
  .default({ on: [], off: [] });

/** Which equation computes which quantity (null: none), and what a clinic switched on or entered itself. */
const methodsSchema = z.strictObject({
  equations: z
    .strictObject({
      ffm: equationId.default('ffm-kyle-2001'),
      smm: chosen('smm-janssen-2000'),
      asm: chosen(null),
      tbw: chosen(null),
      ecw: chosen(null),
      ree: chosen('ree-mifflin-1990'),
    })
    .prefault({}),
  /** Equations from memory that the clinic checked against the paper and switched on. */
  switchedOn: z.array(equationId).default([]),
  /** Resistivity and reactivity from circumferences, whose factors are from memory. */
  geometryCorrected: z.boolean().default(false),
  ownEquations: z.array(ownEquationSchema).default([]),
  references: switchesSchema,
  ownReferences: z.array(ownReferenceSchema).default([]),
  cutOffs: switchesSchema,
});

const answerSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('same-client'), ids: z.array(z.string()).min(1), client: z.string() }),
  z.strictObject({ kind: z.literal('sex-for-equations'), client: z.string(), sex: z.enum(['F', 'M']) }),
  z.strictObject({ kind: z.literal('birth-date'), client: z.string(), date: isoDate }),
  z.strictObject({
    kind: z.literal('far-off'),
    client: z.string(),
    visitDate: isoDate,
    column: z.string(),
    value: z.string(),
    decision: z.enum(['keep', 'refuse']),
  }),
  /** Ids that look alike and are different people. */
  z.strictObject({ kind: z.literal('different-clients'), ids: z.array(z.string()).min(2) }),
  /** Heights that differ were looked at: the median stands for all. */
  z.strictObject({ kind: z.literal('heights'), client: z.string() }),
  /** A person chose another baseline than the date gives, for one enrolment: a visit of that day. */
  z.strictObject({
    kind: z.literal('baseline'),
    client: z.string(),
    program: z.string(),
    start: isoDate.nullable(),
    visitDate: isoDate,
  }),
  /** Readings that came twice and differ: which count. Rows in the order of the files. */
  z.strictObject({
    kind: z.literal('reading'),
    client: z.string(),
    visitDate: isoDate,
    /** Which question of that day; without it all of them. */
    key: z.string().optional(),
    decision: z.enum(['first', 'last', 'all']),
  }),
]);

/** The workspace's settings. Read at the border, trusted inside. */
export const settingsSchema = z.strictObject({
  version: z.literal(1).default(1),
  clinic: z
    .strictObject({ name: z.string(), invented: z.boolean().default(false) })
    .default({ name: '', invented: false }),
  words: z.strictObject({ client: z.enum(['client', 'patient', 'participant']) }).default({ client: 'client' }),
  level: z.union([z.literal(80), z.literal(90), z.literal(95)]).default(95),
  comparable: z.enum(['strict', 'caution', 'all']).optional(),
  leanMeasure: measureId.default('ffm'),
  leanShareLimitPercent: z.number().positive().optional(),
  checkUpsProgram: z.string().default('Check-ups only'),
  programs: z.array(programSchema).default([]),
  /** Enrolments as the clinic entered them. */
  enrolments: z.array(enrolmentSchema).default([]),
  rules: z
    .array(
      z.strictObject({
        id: ruleId,
        grade: z.enum(['no', 'caution', 'note', 'off']).optional(),
        limit: z.number().positive().optional(),
      }),
    )
    .default([]),
  procedures: z.array(procedureSchema).default([]),
  /** Sites (null = visits that name none) and days (null = open) for which it was answered that there is no written procedure. */
  withoutProcedure: z
    .array(
      z.strictObject({
        site: z.string().nullable(),
        from: isoDate.nullable().default(null),
        to: isoDate.nullable().default(null),
      }),
    )
    .default([]),
  errorSource: z
    .discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('own'), alwaysT: z.boolean().default(false) }),
      z.strictObject({
        kind: z.literal('entered'),
        values: z.array(enteredErrorSchema),
        alwaysT: z.boolean().default(false),
      }),
      /** The published between-day error, where the clinic has none of its own: not its own, provisional. */
      z.strictObject({ kind: z.literal('published'), alwaysT: z.boolean().default(false) }),
      /** Answered: none yet. An own error study counts all the same once its visits are there. */
      z.strictObject({ kind: z.literal('none'), alwaysT: z.boolean().default(false) }),
    ])
    .default({ kind: 'own', alwaysT: false }),
  answers: z.array(answerSchema).default([]),
  methods: methodsSchema.prefault({}),
  /** Readings outside the group that an equation was made for: marked, or left without a result. */
  outsideEquation: z.enum(['mark', 'exclude']).default('mark'),
  errorStudy: errorStudySettingsSchema.prefault({}),
  devices: deviceSettingsSchema.prefault({}),
  contacts: contactSettingsSchema.prefault({}),
});

export type Settings = z.infer<typeof settingsSchema>;
/** Settings as they are written: what has a default may be left out. */
export type SettingsInput = z.input<typeof settingsSchema>;
export type Procedure = z.infer<typeof procedureSchema>;
export type Answer = z.infer<typeof answerSchema>;

export const DEFAULT_SETTINGS: Settings = settingsSchema.parse({});
