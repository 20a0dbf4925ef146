'use client';

import { useState } from 'react';
import { parseIsoDate } from '../../../lib/core/iso-date';
import type { DateOrder } from '../../../lib/import/mapping';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { AskForm } from './ask-form';
import type { ColumnQuestionProps, QuestionOf } from './column-question-props';
import { withDateOrder } from './mapping-edit';
import { sourceName } from './mapping-view';
import { RadioList } from './radio-list';
import { SampleCells } from './sample-cells';
import { SameForAll } from './same-for-all';
import { tellingDate } from './telling-date';

/** Day and month cannot be told apart: the readings of one date, side by side. */
export const AskDateOrder = ({ one, question, later, onMapping }: ColumnQuestionProps<QuestionOf<'date-order'>>) => {
  const words = useMessages().importScreen.columnQuestions;
  const { orders } = useMessages().importScreen.mapping;
  const f = useFormatters();
  const [order, setOrder] = useState<DateOrder | undefined>(undefined);
  const [all, setAll] = useState(true);
  const [wrong, setWrong] = useState<string | undefined>(undefined);
  const { header } = one.table.profile;
  const { sample, readings } = tellingDate(question);
  const alike = one.questions.flatMap((other) =>
    other.kind === 'date-order' && order !== undefined && other.orders.includes(order) ? [other.place] : [],
  );
  const dates = one.questions.filter(({ kind }) => kind === 'date-order').length;
  return (
    <AskForm
      ask={words.dateOrder.ask({ column: sourceName(header, question.place), sample })}
      why={words.dateOrder.why}
      wrong={wrong}
      later={later}
      onAnswer={() => {
        if (order === undefined) setWrong(words.choose);
        else onMapping(withDateOrder(one.mapping, all ? [question.place, ...alike] : [question.place], order));
      }}
    >
      <SampleCells samples={question.samples} />
      <RadioList
        legend={words.choose}
        legendHidden
        value={order}
        options={question.orders.map((value, index) => {
          const date = parseIsoDate(readings[index] ?? '');
          return {
            value,
            label:
              date === undefined
                ? words.dateOrder.unreadable({ order: orders[value] })
                : words.dateOrder.reading({ order: orders[value], date: f.date(date) }),
          };
        })}
        onChange={setOrder}
      />
      {dates < 2 ? null : <SameForAll label={words.dateOrder.all} checked={all} onChange={setAll} />}
    </AskForm>
  );
};
