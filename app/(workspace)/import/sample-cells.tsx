'use client';

import { useMessages } from '../../_state/language-provider';
import { CellText } from './cell-text';
import screen from './import-screen.module.css';
import styles from './mapping-step.module.css';

const SHOWN = 3;

/** The first values of a source column. */
export const SampleCells = ({ samples }: { readonly samples: readonly string[] }) => {
  const words = useMessages().importScreen.mapping.targets;
  if (samples.length === 0) return <p className={styles.samples}>{words.noSamples}</p>;
  return (
    <p className={`${styles.samples ?? ''} ${screen.inline ?? ''}`}>
      <span className={styles.samplesLabel}>{words.samples}</span>
      {samples.slice(0, SHOWN).map((sample, index) => (
        <span key={sample}>
          {index === 0 ? '' : ' · '}
          <CellText value={sample} />
        </span>
      ))}
    </p>
  );
};
