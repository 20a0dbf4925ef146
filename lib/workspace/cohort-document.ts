import {
  PURPOSES,
  type ComparableSetting,
  type CohortFilter,
  type Level,
  type Purpose,
  type ReviewVisit,
} from '../cohort/types/filter';
import type { MeasureId } from '../measures/measure-id';
import { contactsPart } from './document-contacts';
import {
  changePart,
  duePart,
  equationFitPart,
  errorFromPart,
  importPart,
  methodPart,
  precisionPart,
  programPart,
  reviewPart,
  vectorsPart,
} from './document-rows';
import { crossCheckPart, errorStudyPart } from './error-study-part';
import { vectorChangePart, vectorErrorPart } from './vector-change-part';
import { comparabilityPart } from './comparability-parts';
import type { OpenedFiles } from './open-files';

export interface DocumentOptions {
  readonly measures: readonly MeasureId[];
  readonly level: Level;
  readonly comparable: ComparableSetting;
  readonly reviewVisit: ReviewVisit;
}

/** The purposes whose pairs are summed by program as they are; planned reviews are counted one by one. */
const SUMMED: readonly Purpose[] = ['consecutive', 'baseline-latest'];

/** Items of a JSON array, one a line, as they come. */
async function* arrayItems(pages: AsyncIterable<readonly unknown[]>): AsyncGenerator<string> {
  let separator = '\n';
  for await (const page of pages) {
    if (page.length === 0) continue;
    yield page
      .map((item) => {
        const text = separator + JSON.stringify(item);
        separator = ',\n';
        return text;
      })
      .join('');
  }
}

/**
 * The JSON document of the command line in pieces: all changes of all values are too long for one text. Numbers at full
 * double precision.
 */
export async function* cohortDocument(opened: OpenedFiles, options: DocumentOptions): AsyncGenerator<string> {
  const { plan, cohort } = opened;
  const filterFor = (measure: MeasureId): CohortFilter => ({
    measure,
    level: options.level,
    comparable: options.comparable,
    reviewVisit: options.reviewVisit,
  });
  const questions = (purposes: readonly Purpose[]) =>
    options.measures.flatMap((measure) => purposes.map((purpose) => ({ measure, purpose })));
  async function* changes(): AsyncGenerator<readonly unknown[]> {
    if (cohort === undefined) return;
    for (const { measure, purpose } of questions(PURPOSES)) {
      yield (await cohort.changes(filterFor(measure), purpose)).map(changePart);
    }
  }
  async function* programs(): AsyncGenerator<readonly unknown[]> {
    if (cohort === undefined) return;
    for (const { measure, purpose } of questions(SUMMED)) {
      yield (await cohort.programs(filterFor(measure), purpose)).map(programPart);
    }
  }
  async function* reviews(): AsyncGenerator<readonly unknown[]> {
    if (cohort === undefined) return;
    for (const measure of options.measures) {
      yield (await cohort.reviewCounts(filterFor(measure))).map((row) => reviewPart(measure, row));
    }
  }
  async function* studies(): AsyncGenerator<readonly unknown[]> {
    if (cohort === undefined) return;
    for (const measure of options.measures) yield [errorStudyPart(await cohort.errorStudy(filterFor(measure)))];
  }
  const wanted = new Set<string>(options.measures);
  const precision = (cohort?.precision(options.level) ?? []).filter((row) => wanted.has(row.measure));
  yield `{"import": ${JSON.stringify(importPart(plan))},\n`;
  yield `"as_of": ${JSON.stringify(cohort?.summary.asOf ?? null)}, "level": ${String(options.level)}, "setting": "${options.comparable}", "review_visit": "${options.reviewVisit}",\n`;
  const methods = cohort?.catalogue.measures.filter(({ id }) => wanted.has(id)) ?? [];
  yield `"methods": ${JSON.stringify(methods.map(methodPart))},\n`;
  const fits = (await cohort?.equationFits(filterFor(options.measures[0] ?? 'ffm'))) ?? [];
  yield `"equation_fits": ${JSON.stringify(fits.map(equationFitPart))},\n`;
  const groups = (cohort?.groupPrecision(options.level) ?? []).filter((row) => wanted.has(row.measure));
  yield `"precision": ${JSON.stringify(precision.map(precisionPart))},\n`;
  yield `"error_from": ${JSON.stringify(errorFromPart(cohort?.errorFrom ?? 'everyone', groups))},\n"error_study": [`;
  yield* arrayItems(studies());
  const checks = (await cohort?.crossChecks(filterFor(options.measures[0] ?? 'ffm'))) ?? [];
  const compared =
    cohort === undefined ? null : await comparabilityPart(cohort, options.measures.map(filterFor), SUMMED);
  yield `],\n"crosscheck": ${JSON.stringify(checks.map(crossCheckPart))},\n"comparability": ${JSON.stringify(compared)},\n"changes": [`;
  yield* arrayItems(changes());
  yield '],\n"programs": [';
  yield* arrayItems(programs());
  yield '],\n"reviews": [';
  yield* arrayItems(reviews());
  const due = await cohort?.due(filterFor(cohort.lean));
  yield `],\n"due": ${JSON.stringify(due === undefined ? null : duePart(due))},\n"vectors": `;
  const vectorFilter = filterFor(options.measures[0] ?? 'ffm');
  const vectors =
    cohort === undefined
      ? { left_out: null, groups: [], paired: [], between: [], error: null, changes: [] }
      : {
          ...vectorsPart(await cohort.vectors(vectorFilter)),
          error: cohort.vectorError === null ? null : vectorErrorPart(cohort.vectorError),
          changes: (await cohort.vectorChanges(vectorFilter, 'baseline-latest')).map(vectorChangePart),
        };
  yield `${JSON.stringify(vectors)},\n`;
  const lists = cohort === undefined ? null : contactsPart(await cohort.contacts(filterFor(cohort.lean)));
  yield `"contacts": ${JSON.stringify(lists)}}\n`;
}
