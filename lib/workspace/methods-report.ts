import type { CohortFilter } from '../cohort/types/filter';
import type { EquationFit, ExportAgreement, MeasuredWay } from '../cohort/types/methods';
import type { Formatters } from '../core/formatters';
import { methodsParagraph as paragraphWords } from '../core/messages/en/methods-paragraph';
import { toBibtex } from '../export/bibtex';
import { toCslJson } from '../export/csl-json';
import { recordedInstrument } from '../export/methods/recorded-instrument';
import { methodsParagraph, type MethodsParagraph } from '../export/methods-paragraph';
import type { MeasureId } from '../measures/measure-id';
import type { Session } from './workspace';

/** What the cohort answered for the report. */
export interface MethodsAnswers {
  readonly fits: readonly EquationFit[];
  readonly agreements: readonly ExportAgreement[];
  readonly ways: readonly MeasuredWay[];
}

export interface MethodsReport extends MethodsParagraph {
  /** Its references as files for reference managers. */
  readonly bibtex: string;
  readonly cslJson: string;
}

/** What the screens of a report show: the weight, the vector, the indices and what they are made of. The filter's value joins them. */
const REPORTED: readonly MeasureId[] = ['weight', 'r_h', 'xc_h', 'phase_angle', 'ffm', 'fm', 'ffmi', 'fmi'];

/** The methods of the open clinic in sentences, with their references, under the filter. */
export const methodsReport = (
  session: Pick<Session, 'cohort' | 'settings' | 'dataVersion'>,
  softwareVersion: string,
  filter: CohortFilter,
  { fits, agreements, ways }: MethodsAnswers,
  formatters: Formatters,
): MethodsReport => {
  const { cohort, settings, dataVersion } = session;
  const paragraph = methodsParagraph(
    {
      softwareVersion,
      dataVersion,
      catalogue: cohort.catalogue,
      settings,
      summary: cohort.summary,
      instrument: recordedInstrument(ways),
      reported: REPORTED.filter((id) => cohort.catalogue.follows(id)).concat(
        REPORTED.includes(filter.measure) ? [] : [filter.measure],
      ),
      level: filter.level,
      comparable: filter.comparable,
      precision: cohort.precision(filter.level),
      fits,
      restingEnergy: null,
      meanChanges: true,
      vectors: cohort.summary.hasImpedance,
      agreements,
    },
    paragraphWords(formatters),
    formatters,
  );
  const citations = paragraph.references.map(({ citation }) => citation);
  return { ...paragraph, bibtex: toBibtex(citations), cslJson: toCslJson(citations) };
};
