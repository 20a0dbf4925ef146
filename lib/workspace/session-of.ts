import type { BuiltClinic } from './build-clinic';
import type { ClinicBody } from './clinic-state';
import type { KeptClinic } from './clinic-keeper';
import type { ImportDifference, KeepingState, Session } from './workspace';

/** One entry for each person: all ids of a person were erased at one instant. */
const erasuresOf = ({ tombstones }: ClinicBody): Session['erasures'] => [
  ...new Map(tombstones.map(({ at, initials, backups }) => [at, { at, initials, backups }])).values(),
];

/** An open clinic as the screens see it. */
export const sessionOf = (
  { header, body }: KeptClinic,
  { plan, cohort, dataVersion }: BuiltClinic,
  keeping: KeepingState,
  difference: ImportDifference | null,
): Session => {
  const { state } = body;
  const importedOn = new Map(state.imports.map((entry) => [entry.id, entry.on]));
  return {
    clinic: {
      id: header.id,
      kind: body.kind,
      name: state.settings.clinic.name,
      invented: state.settings.clinic.invented,
      sealed: header.sealed,
    },
    settings: state.settings,
    dataVersion,
    files: plan.files.map(({ name, source, rows }) => ({
      name,
      importedOn: importedOn.get(source.split('/')[0] ?? '') ?? plan.today,
      rows,
    })),
    waiting: plan.held,
    cohort,
    plan,
    imports: state.imports,
    corrections: state.corrections,
    setAside: state.setAside,
    notes: state.notes,
    marks: state.marks,
    mappings: state.mappings,
    log: body.log,
    exports: body.exports,
    backups: body.backups,
    retentionMonths: state.retentionMonths,
    erasures: erasuresOf(body),
    undoes: body.past.at(-1)?.undoes ?? null,
    redoes: body.future.at(-1)?.redoes ?? null,
    difference,
    keeping,
  };
};
