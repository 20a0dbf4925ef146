'use client';

import { useState } from 'react';
import { readSamples } from '../../../lib/workspace/read-samples';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { AskForm } from './ask-form';
import type { ColumnQuestionProps, QuestionOf } from './column-question-props';
import { withDecimal } from './mapping-edit';
import { sourceName } from './mapping-view';
import { RadioList } from './radio-list';
import { SameForAll } from './same-for-all';
import { SampleCells } from './sample-cells';

const MARKS = ['.', ','] as const;

/** A mark that can be the decimal or the thousands mark: how large one number is, read both ways. */
export const AskDecimal = ({ one, question, later, onMapping }: ColumnQuestionProps<QuestionOf<'decimal'>>) => {
  const words = useMessages().importScreen.columnQuestions;
  const f = useFormatters();
  const [mark, setMark] = useState<(typeof MARKS)[number] | undefined>(undefined);
  const [all, setAll] = useState(true);
  const [wrong, setWrong] = useState<string | undefined>(undefined);
  const sample = question.samples[0] ?? '';
  const others = one.questions.flatMap((other) => (other.kind === 'decimal' ? [other.place] : []));
  const unit = one.mapping.columns.find(({ to, from }) => to === question.to && from.includes(question.place))?.unit;
  return (
    <AskForm
      ask={words.decimal.ask({ column: sourceName(one.table.profile.header, question.place), sample })}
      why={words.decimal.why}
      wrong={wrong}
      later={later}
      onAnswer={() => {
        if (mark === undefined) setWrong(words.choose);
        else onMapping(withDecimal(one.mapping, all ? others : [question.place], mark));
      }}
    >
      <SampleCells samples={question.samples} />
      <RadioList
        legend={words.choose}
        legendHidden
        value={mark}
        options={MARKS.map((value) => {
          const reading = { to: question.to, decimal: value, ...(unit === undefined ? {} : { unit }) };
          const [read] = readSamples(reading, [sample]);
          const number = Number(read);
          const known = read !== undefined && read !== '' && Number.isFinite(number);
          return {
            value,
            label: known
              ? words.decimal.reading({ value: f.number(number, 3), mark: words.decimal.mark[value] })
              : words.decimal.unreadable({ mark: words.decimal.mark[value] }),
          };
        })}
        onChange={setMark}
      />
      {others.length < 2 ? null : <SameForAll label={words.decimal.all} checked={all} onChange={setAll} />}
    </AskForm>
  );
};
