'use client';

import type { PrecisionRow } from '../../../lib/cohort/types/precision-row';
import type { Measure } from '../../../lib/measures/measure';
import { useFormatters, useMessages } from '../../_state/language-provider';
import styles from './repeatability-screen.module.css';
import { repositioningAlone } from './repositioning-alone';

const WIDEST = 100;

const Bar = ({ share, strong }: { readonly share: number; readonly strong: boolean }) => (
  <svg className={styles.bar} viewBox={`0 0 ${WIDEST} 6`} preserveAspectRatio="none" aria-hidden="true">
    <rect width={Math.max(0.5, share * WIDEST)} height="6" className={strong ? styles.barStrong : styles.barPale} />
  </svg>
);

interface ErrorPartsProps {
  readonly row: PrecisionRow;
  readonly measure: Measure;
}

/** Why one reading repeated at once is not enough: the two parts of the error, and what each would ask of a change. */
export const ErrorParts = ({ row, measure }: ErrorPartsProps) => {
  const words = useMessages().repeatability.why;
  const f = useFormatters();
  const alone = repositioningAlone(row);
  const quantity = (value: number): string => f.quantity(value, measure.unit, measure.decimals + 1);
  return (
    <section className={`sheet ${styles.parts ?? ''}`} aria-labelledby="error-parts">
      <h2 id="error-parts">{words.title}</h2>
      {alone === undefined || row.form === 'log' || row.sw === null || row.sb === null || row.lsc === null ? (
        <p>{words.noReplicates}</p>
      ) : (
        <>
          <p>{words.repositioning({ sw: quantity(row.sw) })}</p>
          <p>{words.betweenDays({ sb: quantity(row.sb) })}</p>
          <dl className={styles.compare}>
            <div>
              <dt>{words.neededWithout}</dt>
              <dd>
                <Bar share={Math.min(1, alone / row.lsc)} strong={false} />
                <span>{quantity(alone)}</span>
              </dd>
            </div>
            <div>
              <dt>{words.neededWith}</dt>
              <dd>
                <Bar share={1} strong />
                <span>{quantity(row.lsc)}</span>
              </dd>
            </div>
          </dl>
          <p>{words.compare({ value: measure.name, without: quantity(alone), full: quantity(row.lsc) })}</p>
        </>
      )}
      <p className={styles.formula}>{words.formula}</p>
    </section>
  );
};
