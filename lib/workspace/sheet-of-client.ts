import { nextPlannedVisit } from '../cohort/next-planned-visit';
import type { Settings } from '../cohort/settings';
import type { ClientDetail } from '../cohort/types/client-detail';
import type { Formatters } from '../core/formatters';
import type { IsoDate } from '../core/iso-date';
import type { clientPages } from '../core/messages/en/client-pages';
import { clientSheet, type ClientSheet } from '../export/client-sheet';
import type { Catalogue } from '../measures/catalogue';
import type { MeasureId } from '../measures/measure-id';
import type { ClientMarks } from './client-marks';

/** Whether weight and fat are left off everything that the client sees. */
export const isWeightHidden = (marks: ClientMarks): boolean => marks['no-weight-or-fat']?.value === 'y';

interface SheetSources {
  readonly marks: ClientMarks;
  readonly settings: Settings;
  readonly lean: MeasureId;
  readonly catalogue: Catalogue;
  readonly asOf: IsoDate;
}

/** The page for a client with what the clinic keeps about them: goal, switch and the next planned visit. */
export const sheetOfClient = (
  detail: ClientDetail,
  { marks, settings, lean, catalogue, asOf }: SheetSources,
  words: ReturnType<typeof clientPages>['plain'],
  formatters: Formatters,
): ClientSheet =>
  clientSheet(
    detail,
    {
      lean,
      verificationOf: (measure) => catalogue.measure(measure).verification,
      hidden: isWeightHidden(marks),
      goal: marks.goal?.value,
      nextVisit: nextPlannedVisit(detail, settings.programs, asOf),
    },
    words,
    formatters,
  );
