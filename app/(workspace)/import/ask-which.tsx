'use client';

import { useState } from 'react';
import { useMessages } from '../../_state/language-provider';
import { AskForm } from './ask-form';
import type { ColumnQuestionProps, QuestionOf } from './column-question-props';
import { withOnly } from './mapping-edit';
import { sourceName } from './mapping-view';
import { RadioList } from './radio-list';

const NONE = 'none';
const SHOWN = 3;

/** Which of several source columns counts; the others are kept, not used. */
export const AskWhich = ({
  one,
  question,
  later,
  onMapping,
}: ColumnQuestionProps<QuestionOf<'several-columns' | 'same-header'>>) => {
  const words = useMessages().importScreen.columnQuestions;
  const { name } = useMessages().importScreen.mapping;
  const [chosen, setChosen] = useState<string | undefined>(undefined);
  const [wrong, setWrong] = useState<string | undefined>(undefined);
  const { header, columns } = one.table.profile;
  const several = question.kind === 'several-columns';
  const option = (place: number): string => {
    const samples = columns.find((column) => column.place === place)?.samples ?? [];
    return words.several.option({
      name: sourceName(header, place),
      samples: samples.length === 0 ? words.several.empty : samples.slice(0, SHOWN).join(' · '),
    });
  };
  return (
    <AskForm
      ask={
        several
          ? words.several.ask({ target: name({ column: question.to }) })
          : words.sameHeader.ask({ name: question.name, n: question.places.length })
      }
      why={several ? words.several.why : words.sameHeader.why}
      wrong={wrong}
      later={later}
      onAnswer={() => {
        if (chosen === undefined) setWrong(words.choose);
        else {
          const place = chosen === NONE ? null : Number(chosen);
          onMapping(withOnly(one.mapping, question.places, place, several ? question.to : undefined));
        }
      }}
    >
      <RadioList
        legend={words.choose}
        legendHidden
        value={chosen}
        options={[
          ...question.places.map((place) => ({ value: String(place), label: option(place) })),
          { value: NONE, label: words.several.none },
        ]}
        onChange={setChosen}
      />
    </AskForm>
  );
};
