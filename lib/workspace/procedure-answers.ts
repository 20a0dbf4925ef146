import type { Procedure, Settings } from '../cohort/settings';

type Denied = Settings['withoutProcedure'][number];

/** Both ends belong to it; null is open. */
type Period = Pick<Procedure, 'from' | 'to'>;

const share = (a: Period, b: Period): boolean =>
  (a.from === null || b.to === null || a.from <= b.to) && (b.from === null || a.to === null || b.from <= a.to);

/**
 * The settings with a procedure declared, at a place of the list instead of the one there. That there is no procedure
 * cannot stand beside it for the same site and days: such an answer is taken back.
 */
export const declareProcedure = (
  settings: Settings,
  procedure: Procedure,
  place = settings.procedures.length,
): Settings => ({
  ...settings,
  procedures: settings.procedures.toSpliced(place, 1, procedure),
  withoutProcedure: settings.withoutProcedure.filter(
    (denied) => !((procedure.site === null || procedure.site === denied.site) && share(procedure, denied)),
  ),
});

/**
 * The settings with the answer that a site measured without a written procedure: at all times, or only over the days
 * asked about where another procedure is declared for the site.
 */
export const denyProcedure = (settings: Settings, { site, from, to }: Denied): Settings => {
  const elsewhen = settings.procedures.some((procedure) => procedure.site === null || procedure.site === site);
  const denied = elsewhen ? { site, from, to } : { site, from: null, to: null };
  return { ...settings, withoutProcedure: [...settings.withoutProcedure, denied] };
};
