'use client';

import type { ImportPlan } from '../../../lib/import/plan';
import { useMessages } from '../../_state/language-provider';
import { conversionWords } from './conversion-words';
import styles from './import-screen.module.css';

/** Columns whose every cell was converted: said once a column, not once a cell. */
export const PlanConversions = ({ plan }: { readonly plan: ImportPlan }) => {
  const words = useMessages().importScreen;
  const files = plan.files.filter(({ conversions }) => conversions.length > 0);
  if (files.length === 0) return null;
  return (
    <section className="sheet stack" aria-labelledby="conversions">
      <h2 id="conversions">{words.files.conversionsTitle}</h2>
      {files.map(({ name, source, conversions }) => (
        <div key={source}>
          {files.length < 2 && plan.files.length < 2 ? null : (
            <p className="quiet small">
              <bdi>{name}</bdi>
            </p>
          )}
          <ul className={styles.list}>
            {conversionWords(conversions, words).map((said) => (
              <li key={said}>{said}</li>
            ))}
          </ul>
        </div>
      ))}
      <p className="quiet small">{words.files.conversionsNote}</p>
    </section>
  );
};
