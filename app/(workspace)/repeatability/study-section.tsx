'use client';

import { useMemo } from 'react';
import type { ErrorStudy } from '../../../lib/cohort/types/error-study';
import type { PrecisionRow } from '../../../lib/cohort/types/precision-row';
import type { Measure } from '../../../lib/measures/measure';
import { useFormatters, useMessages } from '../../_state/language-provider';
import type { CohortQuery } from '../../_state/use-cohort-query';
import { useFilter } from '../../_state/use-filter';
import { useSession } from '../../_state/workspace-provider';
import { AnchoredSection } from '../../_ui/anchored-section';
import { DataTable } from '../../_ui/data-table';
import { Failing, Loading } from '../../_ui/states';
import { groupColumns, groupKey } from './group-columns';
import styles from './repeatability-screen.module.css';
import { StudyFigures } from './study-figures-view';
import { studySentences } from './study-sentences';

interface StudySectionProps {
  readonly query: CohortQuery<ErrorStudy>;
  readonly measure: Measure;
  readonly row: PrecisionRow | undefined;
}

const Study = ({ study, measure, row }: Omit<StudySectionProps, 'query'> & { readonly study: ErrorStudy }) => {
  const messages = useMessages();
  const words = messages.errorStudy;
  const formatters = useFormatters();
  const sentences = studySentences(study, { words, reasons: messages.reasons, formatters, measure });
  const { cohort } = useSession();
  const { filter } = useFilter();
  const own = useMemo(
    () => ({
      from: cohort.errorFrom,
      rows: cohort.groupPrecision(filter.level).filter((one) => one.measure === measure.id),
    }),
    [cohort, filter.level, measure.id],
  );
  const columns = useMemo(
    () => groupColumns(words.groups, measure, formatters, own),
    [words.groups, measure, formatters, own],
  );
  return (
    <>
      <AnchoredSection id="study" title={words.title} className="sheet">
        <ul className={styles.facts}>
          {sentences.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
        <p className="quiet small">{words.cautionLine}</p>
      </AnchoredSection>
      {study.clusters.length === 0 ? null : <StudyFigures study={study} measure={measure} row={row} />}
      {study.groups.length === 0 ? null : (
        <AnchoredSection
          id="groups"
          title={words.groups.title}
          lead={words.groups.lead({ from: own.from, own: own.rows.length })}
          className="sheet"
        >
          <DataTable
            caption={words.groups.caption}
            rows={study.groups}
            columns={columns}
            rowKey={groupKey}
            fileName={words.groups.fileName}
            rowsWord={words.groups.rowsWord}
          />
        </AnchoredSection>
      )}
    </>
  );
};

/** What the error study of the chosen value stands on, in sentences, figures and groups. */
export const StudySection = ({ query, measure, row }: StudySectionProps) => {
  if (query.kind === 'failed') return <Failing error={query.error} onRetry={query.retry} />;
  const study = query.kind === 'ready' ? query.value : query.previous;
  if (study === undefined || study.measure !== measure.id) return <Loading />;
  return <Study study={study} measure={measure} row={row} />;
};
