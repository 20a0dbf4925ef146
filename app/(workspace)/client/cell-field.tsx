'use client';

import { SOURCE_UNITS } from '../../../lib/import/mapping';
import { TARGET_BY_NAME } from '../../../lib/workspace/mapping-targets';
import { useMessages } from '../../_state/language-provider';
import { LabelledInput } from '../../_ui/labelled-input';
import { LabelledSelect } from '../../_ui/labelled-select';

interface CellFieldProps {
  readonly column: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
}

/** The new value of a cell, by the kind of its column: a date, one of a few words, a number, a text. */
export const CellField = ({ column, value, onChange }: CellFieldProps) => {
  const messages = useMessages();
  const words = messages.client.correct;
  const { canonicalWord, units } = messages.importScreen.mapping;
  const target = TARGET_BY_NAME.get(column);
  if (target?.type === 'date') return <LabelledInput label={words.to} type="date" value={value} onChange={onChange} />;
  if (target !== undefined && target.choices !== null) {
    const { choices, type } = target;
    const wordOf = (choice: string): string =>
      type === 'flag' && (choice === 'y' || choice === 'n') ? words.flag[choice] : (canonicalWord[choice] ?? choice);
    return (
      <LabelledSelect
        label={words.to}
        value={value}
        options={[
          { value: '', label: words.empty },
          ...choices.map((choice) => ({ value: choice, label: wordOf(choice) })),
        ]}
        onChange={onChange}
      />
    );
  }
  const unit = SOURCE_UNITS.find((one) => one !== '1' && one === target?.unit);
  const isNumber = target?.type === 'number' || target?.type === 'integer';
  return (
    <>
      <LabelledInput
        label={unit === undefined ? words.to : `${words.to}, ${words.unit({ unit: units[unit] })}`}
        type="text"
        inputMode={isNumber ? 'decimal' : 'text'}
        value={value}
        onChange={onChange}
        maxLength={200}
      />
      <p className="quiet small">{words.asFiled}</p>
    </>
  );
};
