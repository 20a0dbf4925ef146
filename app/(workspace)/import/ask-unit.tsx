'use client';

import { useState } from 'react';
import type { SourceUnit } from '../../../lib/import/mapping';
import { readSamples } from '../../../lib/workspace/read-samples';
import { TARGET_BY_NAME } from '../../../lib/workspace/mapping-targets';
import { useMessages } from '../../_state/language-provider';
import { AskForm } from './ask-form';
import type { ColumnQuestionProps, QuestionOf } from './column-question-props';
import { keyOf, withReadingOf } from './mapping-edit';
import { sourceName } from './mapping-view';
import { RadioList } from './radio-list';
import { shortenedNumber } from './shortened-number';

const SHOWN = 3;

/** A unit that is not sure: what the first values would be in each. */
export const AskUnit = ({ one, question, later, onMapping }: ColumnQuestionProps<QuestionOf<'unit'>>) => {
  const words = useMessages().importScreen.columnQuestions;
  const { units, name } = useMessages().importScreen.mapping;
  const [unit, setUnit] = useState<SourceUnit | undefined>(undefined);
  const [wrong, setWrong] = useState<string | undefined>(undefined);
  const column = one.mapping.columns.find(({ to, from }) => to === question.to && from.includes(question.place));
  const canonical = TARGET_BY_NAME.get(question.to)?.unit ?? '';
  const samples = question.samples.slice(0, SHOWN);
  return (
    <AskForm
      ask={words.unit.ask({
        column: sourceName(one.table.profile.header, question.place),
        target: name({ column: question.to }),
      })}
      why={words.unit.why}
      wrong={wrong}
      later={later}
      onAnswer={() => {
        if (unit === undefined || column === undefined) setWrong(words.choose);
        else onMapping(withReadingOf(one.mapping, keyOf(column), { unit }));
      }}
    >
      <RadioList
        legend={words.choose}
        legendHidden
        value={unit}
        options={question.units.map((value) => {
          const decimal = column?.decimal === undefined ? {} : { decimal: column.decimal };
          const read = readSamples({ to: question.to, unit: value, ...decimal }, samples);
          const pairs = samples.map(
            (sample, index) => `${sample} → ${shortenedNumber(read[index] ?? '')} ${canonical}`,
          );
          return { value, label: words.unit.reading({ unit: units[value], values: pairs.join('; ') }) };
        })}
        onChange={setUnit}
      />
    </AskForm>
  );
};
