'use client';

import { wordKey } from '../../../lib/workspace/word-key';
import { useMessages } from '../../_state/language-provider';
import { CellText } from './cell-text';
import styles from './mapping-step.module.css';
import { RowSelect } from './row-select';
import { canonicalWordOf } from './canonical-word';

interface WordsEditorProps {
  readonly title: string;
  readonly choices: readonly string[];
  readonly found: readonly { readonly word: string; readonly count: number }[];
  readonly words: Readonly<Record<string, string>>;
  readonly onWords: (words: Record<string, string>) => void;
}

/** The words of a column, each with what it means. */
export const WordsEditor = ({ title, choices, found, words, onWords }: WordsEditorProps) => {
  const mapping = useMessages().importScreen.mapping;
  const questions = useMessages().importScreen.columnQuestions;
  return (
    <details className={styles.more}>
      <summary>
        {title} ({mapping.targets.wordsCount({ n: found.length })})
      </summary>
      <ul className={styles.words}>
        {found.map(({ word, count }) => (
          <li key={word}>
            <span>
              <CellText value={word} /> <span className="quiet small">{questions.words.count({ n: count })}</span>
            </span>
            <RowSelect
              label=""
              name={`${title}: ${word}`}
              value={canonicalWordOf(word, words, choices)}
              options={['', ...choices].map((choice) => ({
                value: choice,
                label: mapping.canonicalWord[choice] ?? choice,
              }))}
              onChange={(choice) => {
                onWords({ ...words, [wordKey(word)]: choice });
              }}
            />
          </li>
        ))}
      </ul>
    </details>
  );
};
