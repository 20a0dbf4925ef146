'use client';

import { useMemo } from 'react';
import type { ClientDetail } from '../../../lib/cohort/types/client-detail';
import { useFilter } from '../../_state/use-filter';
import { useValueFacts } from '../../_state/use-value-facts';
import { DataTable } from '../../_ui/data-table';
import type { ChangeRow } from '../../../lib/cohort/types/change-row';
import { useWording } from '../contact/use-wording';
import { latestColumns, pairColumns } from './change-columns';
import { ClientConfidence } from './client-confidence';
import { ClientEnergyPanel } from './client-energy';
import { ClientEnrolments } from './client-enrolments';
import { ClientHead } from './client-head';
import { ClientIndexFigure } from './client-index-figure';
import { ClientLanesFigure } from './client-lanes-figure';
import { ClientMissing, ClientNotes } from './client-notes';
import { ClientOwn } from './client-own';
import { ClientReadings } from './client-readings';
import { ClientSplit } from './client-split';
import { ClientTermsFigure } from './client-terms-figure';
import { ClientVectorFigure } from './client-vector-figure';
import styles from './client-view.module.css';
import { ClientWaistPanel } from './client-waist';
import { currentChange, judgedMeasure } from '../../../lib/workspace/current-change';
import { PageLinks } from './page-links';
import { NextTime } from './next-time';
import { RecordedCautions } from './recorded-cautions';

const keyOf = (row: ChangeRow): string =>
  `${row.measure} ${row.purpose} ${row.fromVisit} ${row.toVisit} ${row.program}`;

/** Everything about one client, so that it prints as one page. */
export const ClientView = ({ detail }: { readonly detail: ClientDetail }) => {
  const wording = useWording();
  const { filter } = useFilter();
  const { messages, formatters, valueWords, guardsOf, programs, lean, errorFrom } = wording;
  const words = messages.client;
  const measure = judgedMeasure(detail, filter.measure);
  const facts = useValueFacts(measure);
  const columnWording = useMemo(
    () => ({ messages, formatters, valueWords, guardsOf, programs, lean, errorFrom }),
    [messages, formatters, valueWords, guardsOf, programs, lean, errorFrom],
  );
  const pairs = useMemo(() => pairColumns(measure, columnWording), [measure, columnWording]);
  const latest = useMemo(
    () =>
      latestColumns(
        columnWording,
        detail.latestChanges.map((row) => row.measure),
      ),
    [columnWording, detail],
  );
  const change = currentChange(detail, measure);
  return (
    <article className={styles.client}>
      <ClientHead detail={detail} measure={measure} actions={<PageLinks clientKey={detail.clientKey} />} />
      <div className={styles.columns}>
        <ClientLanesFigure detail={detail} measure={measure} />
        <div className={styles.side}>
          {change === undefined || change.terms === null || change.guard === 'stop' ? null : (
            <ClientTermsFigure change={change} />
          )}
          <NextTime detail={detail} measure={measure} />
          <ClientNotes detail={detail} measure={measure} />
          <RecordedCautions key={`${detail.client} cautions`} client={detail.client} />
          <ClientMissing detail={detail} />
        </div>
      </div>
      <div className={styles.pair}>
        {detail.vector.vectors.length === 0 ? null : (
          <div className="sheet">
            <ClientVectorFigure detail={detail} />
            <ClientSplit detail={detail} />
          </div>
        )}
        <div className={styles.tables}>
          <div className={`sheet ${styles.whenFull ?? ''}`}>
            <ClientIndexFigure detail={detail} />
          </div>
          {detail.confidence === null ? null : (
            <div className="sheet">
              <ClientConfidence detail={detail} measure={measure} />
            </div>
          )}
        </div>
      </div>
      <div className={styles.tables}>
        {detail.pairs.length === 0 ? null : (
          <div className="sheet">
            <DataTable
              caption={words.pairs({ value: valueWords(measure).name })}
              rows={detail.pairs}
              columns={pairs}
              rowKey={keyOf}
              fileName="client-comparisons"
              facts={facts}
              rowsWord={words.pairsWord}
            />
          </div>
        )}
        <div className="sheet">
          <DataTable
            caption={words.latest}
            rows={detail.latestChanges}
            columns={latest}
            rowKey={keyOf}
            fileName="client-latest-changes"
            rowsWord={words.latestWord}
          />
          <p className="quiet small no-print">{words.sameChangeNote}</p>
        </div>
        <div className={`${styles.panels ?? ''} no-print`} key={`own ${detail.client}`}>
          <ClientOwn detail={detail} />
          <div className={styles.tables}>
            <ClientEnergyPanel detail={detail} />
            <ClientWaistPanel detail={detail} />
          </div>
        </div>
        <ClientEnrolments key={`${detail.client} programs`} detail={detail} />
        <ClientReadings key={detail.client} client={detail.client} />
      </div>
    </article>
  );
};
