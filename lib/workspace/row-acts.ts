import type { AppError } from '../core/app-error';
import { workspaceErrors as errors } from '../core/messages/en/workspace-errors';
import { err, ok, type Result } from '../core/result';
import type { Engine } from '../engine/types';
import { acceptedCsv } from '../import/accepted-csv';
import { rowsOfClient } from '../import/kept-rows';
import type { ImportPlan } from '../import/plan';
import { rejectReport, reportRows, type ReportOptions } from '../import/reject-report';
import { sha256OfBlob } from '../storage/sha256-of-blob';
import { everythingAbout } from './everything-about';
import { logged } from './history';
import { PLAN_PREFIX } from './import-acts';
import type { MadeBlob, Workspace } from './workspace';
import type { Workbench } from './workbench';
import { zipOf } from './zip-of';

/** Text in pieces as a CSV file, with a byte order mark so that spreadsheets read it as UTF-8. */
const csvBlob = async (pieces: AsyncIterable<string>): Promise<Blob> => {
  const parts: Blob[] = [new Blob(['\uFEFF'])];
  for await (const piece of pieces) parts.push(new Blob([piece]));
  return new Blob(parts, { type: 'text/csv;charset=utf-8' });
};

/** A result whose failure is thrown: for acts that promise a value. It reads as an error for a person. */
const valueOf = <T>(result: Result<T, AppError>): T => {
  if (result.ok) return result.value;
  throw Object.assign(new Error(result.error.message), result.error);
};

const hasReported = async (engine: Engine, options: ReportOptions): Promise<boolean> => {
  for await (const rows of reportRows(engine, options)) if (rows.length > 0) return true;
  return false;
};

/** Rows as they stand, as files: of one client, of all, and of those that were not accepted. */
export const rowActs = (
  bench: Workbench,
  lastPlan: () => ImportPlan | undefined,
): Pick<Workspace, 'rowsOf' | 'reportOf' | 'exportRows' | 'noteExport' | 'everythingAbout'> => {
  const shown = () => {
    const here = bench.here();
    return here?.kept === undefined || here.built === undefined
      ? err(errors.noClinic)
      : ok({ kept: here.kept, built: here.built });
  };

  const reportOf = async (plan: ImportPlan): Promise<Result<MadeBlob, AppError>> => {
    const isOpen = bench.here()?.built?.plan.fingerprint === plan.fingerprint;
    if (!isOpen && lastPlan()?.fingerprint !== plan.fingerprint) return err(errors.planIsStale);
    const engine = await bench.engine();
    const prefix = isOpen ? '' : PLAN_PREFIX;
    const visits = await csvBlob(rejectReport(engine, { prefix }));
    const name = `driftline-not-accepted-${plan.today}`;
    if (!(await hasReported(engine, { prefix, role: 'enrolment' }))) return ok({ name: `${name}.csv`, blob: visits });
    const enrolments = await csvBlob(rejectReport(engine, { prefix, role: 'enrolment' }));
    const hasVisits = await hasReported(engine, { prefix });
    const blob = await zipOf({ ...(hasVisits ? { 'visits.csv': visits } : {}), 'enrolments.csv': enrolments });
    return ok({ name: `${name}.zip`, blob });
  };

  const exportRows = async (): Promise<Result<MadeBlob, AppError>> => {
    const open = shown();
    if (!open.ok) return open;
    const engine = await bench.engine();
    const { dataVersion, plan } = open.value.built;
    const visits = await csvBlob(acceptedCsv(engine, { role: 'visits' }));
    if (plan.enrolments === 0) return ok({ name: `driftline-rows-${dataVersion}.csv`, blob: visits });
    const enrolments = await csvBlob(acceptedCsv(engine, { role: 'enrolment' }));
    const blob = await zipOf({ 'visits.csv': visits, 'enrolments.csv': enrolments });
    return ok({ name: `driftline-rows-${dataVersion}.zip`, blob });
  };

  return {
    rowsOf: async (client) =>
      valueOf(
        await bench.inTurn(async () => {
          const open = shown();
          return open.ok ? ok(await rowsOfClient(await bench.engine(), client)) : open;
        }),
      ),
    reportOf: async (plan) => valueOf(await bench.inTurn(() => reportOf(plan))),
    exportRows: async () => valueOf(await bench.inTurn(exportRows)),
    noteExport: (what, made, rows) =>
      bench.inTurn(async () => {
        const kept = await bench.writable();
        if (!kept.ok) return kept;
        const entry = bench.sign('exported', { files: made.name, rows });
        const noted = {
          at: entry.at,
          initials: entry.initials,
          what,
          name: made.name,
          rows,
          sha256: await sha256OfBlob(made.blob),
        };
        const { body } = kept.value;
        return bench.enact(kept.value, logged({ ...body, exports: [...body.exports, noted] }, entry));
      }),
    everythingAbout: (client) =>
      bench.inTurn(async () => {
        const open = shown();
        if (!open.ok) return open;
        return everythingAbout(await bench.engine(), open.value.kept.body, client, bench.sign('exported').at);
      }),
  };
};
