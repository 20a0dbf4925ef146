'use client';

import { useState } from 'react';
import { parseIsoDate } from '../../../lib/core/iso-date';
import { completedMapping } from '../../../lib/workspace/completed-mapping';
import { useMessages } from '../../_state/language-provider';
import { LabelledInput } from '../../_ui/labelled-input';
import { LabelledSelect } from '../../_ui/labelled-select';
import { AskForm } from './ask-form';
import type { ColumnQuestionProps, QuestionOf } from './column-question-props';
import styles from './import-screen.module.css';
import { withConstant, withSource } from './mapping-edit';
import { sourceName } from './mapping-view';

const NONE = '';

/** Which column holds something that no row can do without; or one value for all. */
export const AskColumn = ({ one, question, later, onMapping }: ColumnQuestionProps<QuestionOf<'missing-column'>>) => {
  const words = useMessages().importScreen.columnQuestions;
  const { name } = useMessages().importScreen.mapping;
  const [first, setFirst] = useState(NONE);
  const [second, setSecond] = useState(NONE);
  const [constant, setConstant] = useState('');
  const [wrong, setWrong] = useState<string | undefined>(undefined);
  const { header, columns } = one.table.profile;
  const isDate = question.to === 'visit_date';
  const options = header.map((_, place) => {
    const sample = columns.find((column) => column.place === place)?.samples[0];
    const shown = sourceName(header, place);
    return { value: String(place), label: sample === undefined ? shown : `${shown} (${sample.slice(0, 24)})` };
  });
  const answer = (): void => {
    if (first !== NONE) {
      const from = [Number(first), ...(second === NONE || second === first ? [] : [Number(second)])];
      onMapping(completedMapping(one.table, one.mapping, withSource(one.mapping, { to: question.to }, from)));
    } else if (constant.trim() === '') setWrong(words.missing.wrong);
    else if (isDate && parseIsoDate(constant) === undefined) setWrong(words.missing.wrongDate);
    else onMapping(withConstant(one.mapping, question.to, constant.trim()));
  };
  return (
    <AskForm
      ask={words.missing.ask({ target: name({ column: question.to }) })}
      why={words.missing.why[question.to] ?? ''}
      wrong={wrong}
      later={later}
      onAnswer={answer}
    >
      <div className={styles.fields}>
        <LabelledSelect
          label={words.missing.column}
          value={first}
          options={[{ value: NONE, label: words.choose }, ...options]}
          onChange={setFirst}
        />
        <LabelledSelect
          label={words.missing.joined}
          value={second}
          options={[{ value: NONE, label: words.several.none }, ...options]}
          onChange={setSecond}
        />
        <LabelledInput
          label={`${words.missing.or}`}
          type={isDate ? 'date' : 'text'}
          value={constant}
          maxLength={80}
          onChange={setConstant}
        />
      </div>
    </AskForm>
  );
};
