'use client';

import { useEffect, useRef, useState } from 'react';
import type { Mapping } from '../../../lib/import/mapping';
import { useMessages } from '../../_state/language-provider';
import { ColumnQuestion } from './column-question';
import { columnQuestionKey, inAskingOrder } from './column-questions';
import type { ImportWork } from './import-work';

interface ColumnQuestionStackProps {
  readonly work: ImportWork;
  readonly answered: number;
  readonly onMapping: (index: number, mapping: Mapping) => void;
}

/** What has to be said about the columns before the rows can be judged: one question at a time. */
export const ColumnQuestionStack = ({ work, answered, onMapping }: ColumnQuestionStackProps) => {
  const words = useMessages().importScreen.columnQuestions;
  const [later, setLater] = useState<readonly string[]>([]);
  const heading = useRef<HTMLHeadingElement>(null);
  const open = work.tables.flatMap((one, index) =>
    one.used
      ? inAskingOrder(one.questions).map((question) => ({
          one,
          index,
          question,
          key: `${String(index)} ${columnQuestionKey(question)}`,
        }))
      : [],
  );
  const present = open.find(({ key }) => !later.includes(key)) ?? open[0];
  const presentKey = present?.key;
  const before = useRef(presentKey);
  useEffect(() => {
    if (before.current !== presentKey && presentKey !== undefined) heading.current?.focus();
    before.current = presentKey;
  }, [presentKey]);
  if (present === undefined) return null;
  return (
    <section className="sheet stack" aria-labelledby="column-question">
      <h2 id="column-question" ref={heading} tabIndex={-1}>
        {words.title}
      </h2>
      <p className="quiet small" role="status">
        {words.progress({ at: answered + 1, of: answered + open.length })}{' '}
        <bdi>{words.of({ name: present.one.name })}</bdi>
      </p>
      <ColumnQuestion
        key={present.key}
        one={present.one}
        question={present.question}
        later={
          open.length < 2 ? null : (
            <button
              type="button"
              className="button"
              onClick={() => {
                setLater([...later.filter((key) => key !== present.key), present.key].slice(-(open.length - 1)));
              }}
            >
              {words.later}
            </button>
          )
        }
        onMapping={(mapping) => {
          onMapping(present.index, mapping);
        }}
      />
    </section>
  );
};
