'use client';

import { useMessages } from '../../_state/language-provider';
import styles from './import-screen.module.css';
import { shownCell } from './shown-cell';

/** A cell of a file, as text alone and never as markup, link or formula; a long one is cut and says how long it was. */
export const CellText = ({ value }: { readonly value: string }) => {
  const words = useMessages().importScreen.findings;
  if (value === '') return <span className="quiet">{words.emptyValue}</span>;
  const { text, cut, length } = shownCell(value);
  return <bdi className={styles.cell}>{cut ? words.shortened({ text, length }) : text}</bdi>;
};
