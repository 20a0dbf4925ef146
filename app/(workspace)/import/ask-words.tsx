'use client';

import { useState } from 'react';
import { TARGET_BY_NAME } from '../../../lib/workspace/mapping-targets';
import { wordKey } from '../../../lib/workspace/word-key';
import { useMessages } from '../../_state/language-provider';
import { AskForm } from './ask-form';
import { CellText } from './cell-text';
import type { ColumnQuestionProps, QuestionOf } from './column-question-props';
import { withWords } from './mapping-edit';
import { sourceName } from './mapping-view';
import mappingStyles from './mapping-step.module.css';
import { RowSelect } from './row-select';

const NOT_SAID = '?';

/** What the words of a column mean: each with its count, none of them guessed. */
export const AskWords = ({ one, question, later, onMapping }: ColumnQuestionProps<QuestionOf<'words'>>) => {
  const words = useMessages().importScreen.columnQuestions;
  const { canonicalWord, name } = useMessages().importScreen.mapping;
  const [said, setSaid] = useState<Readonly<Record<string, string>>>({});
  const [wrong, setWrong] = useState<string | undefined>(undefined);
  const column = sourceName(one.table.profile.header, question.place);
  const target = name({ column: question.to });
  const isSex = question.to === 'sex' || question.to === 'sex_for_equations';
  const keys = question.words.map(({ word }) => wordKey(word));
  const isCode = TARGET_BY_NAME.get(question.to)?.choices === null;
  const ask = isCode
    ? words.words.askCode({ column, target })
    : isSex
      ? words.words.askSex({ column })
      : words.words.ask({ column, target });
  return (
    <AskForm
      ask={ask}
      why={isCode ? words.words.whyCode : words.words.why}
      wrong={wrong}
      later={later}
      onAnswer={() => {
        if (keys.some((key) => said[key] === undefined)) setWrong(words.words.needed);
        else onMapping(withWords(one.mapping, question.to, question.place, said));
      }}
    >
      <ul className={mappingStyles.words}>
        {question.words.map(({ word, count }) => {
          const key = wordKey(word);
          return (
            <li key={word}>
              <span>
                <CellText value={word} /> <span className="quiet small">{words.words.count({ n: count })}</span>
              </span>
              <RowSelect
                label=""
                name={words.words.word({ word })}
                value={said[key] ?? NOT_SAID}
                options={[
                  { value: NOT_SAID, label: words.choose },
                  ...[...(isCode ? [word] : question.choices), ''].map((choice) => ({
                    value: choice,
                    label: isCode && choice !== '' ? words.words.asItStands : (canonicalWord[choice] ?? choice),
                  })),
                ]}
                onChange={(choice) => {
                  if (choice !== NOT_SAID) setSaid({ ...said, [key]: choice });
                }}
              />
            </li>
          );
        })}
      </ul>
    </AskForm>
  );
};
