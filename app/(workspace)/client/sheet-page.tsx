'use client';

import { useMemo } from 'react';
import type { ClientDetail } from '../../../lib/cohort/types/client-detail';
import { shownName } from '../../../lib/workspace/client-marks';
import { isWeightHidden, sheetOfClient } from '../../../lib/workspace/sheet-of-client';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { useSession } from '../../_state/workspace-provider';
import { PageActions } from './page-actions';
import styles from './sheet-page.module.css';
import { useClientMarks } from './use-client-marks';

/** The page that a client is handed: plain words, and without weight or fat where that was chosen. */
export const SheetPage = ({ detail }: { readonly detail: ClientDetail }) => {
  const messages = useMessages();
  const words = messages.clientPages;
  const formatters = useFormatters();
  const { cohort, settings, clinic } = useSession();
  const marks = useClientMarks(detail.client);
  const hidden = isWeightHidden(marks);
  const sheet = useMemo(
    () =>
      sheetOfClient(
        detail,
        { marks, settings, lean: cohort.lean, catalogue: cohort.catalogue, asOf: cohort.summary.asOf },
        words.plain,
        formatters,
      ),
    [detail, cohort, marks, settings, words, formatters],
  );
  return (
    <>
      <div className={`${styles.actions ?? ''} no-print`}>
        <p className="quiet small">
          {[words.preview, ...(hidden ? [words.hidden] : []), ...(sheet.goalLeftOff ? [words.goalLeftOff] : [])].join(
            ' ',
          )}
        </p>
        <PageActions clientKey={detail.clientKey} />
      </div>
      <article className={`sheet ${styles.page ?? ''}`}>
        <header className={styles.head}>
          <h1>{sheet.title}</h1>
          <p>
            <bdi>{words.plain.for({ name: shownName(marks, detail) ?? detail.client })}</bdi>
          </p>
          <p className="quiet">
            <bdi>{words.plain.clinic({ clinic: clinic.name, date: formatters.date(cohort.summary.asOf) })}</bdi>
          </p>
        </header>
        {sheet.sections.map(({ heading, paragraphs, points }) => (
          <section key={heading}>
            <h2>{heading}</h2>
            {paragraphs.map((paragraph) => (
              <p key={paragraph}>
                <bdi>{paragraph}</bdi>
              </p>
            ))}
            {points === undefined ? null : (
              <ul className={styles.points}>
                {points.map((point) => (
                  <li key={point}>{point}</li>
                ))}
              </ul>
            )}
            {heading === words.plain.visit ? (
              <p className={styles.line}>
                <span>{words.plain.date}</span>
              </p>
            ) : null}
          </section>
        ))}
        <p className={styles.foot}>{sheet.foot}</p>
      </article>
    </>
  );
};
