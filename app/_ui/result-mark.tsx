'use client';

import type { ComparisonResult } from '../../lib/cohort/types/change-row';
import { useMessages } from '../_state/language-provider';
import styles from './result-mark.module.css';

interface ResultMarkProps {
  /** Null where a guard stops or holds the value. */
  readonly result: ComparisonResult | null;
  /** What stands instead where there is no result. */
  readonly otherwise?: string;
}

/** The result of a comparison: glyph and word, in ink, never a colour. */
export const ResultMark = ({ result, otherwise }: ResultMarkProps) => {
  const messages = useMessages();
  if (result === null) return <span className="quiet">{otherwise ?? messages.table.empty}</span>;
  const [glyph = '', ...words] = messages.common.result[result].split(' ');
  return (
    <span className={styles.mark}>
      <span className={styles.glyph} aria-hidden="true">
        {glyph}
      </span>{' '}
      {words.join(' ')}
    </span>
  );
};
