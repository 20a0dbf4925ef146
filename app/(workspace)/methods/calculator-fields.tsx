'use client';

import type { InputId } from '../../../lib/measures/input-id';
import { useMessages, usePreferences } from '../../_state/language-provider';
import { LabelledInput } from '../../_ui/labelled-input';
import { LabelledSelect } from '../../_ui/labelled-select';
import { inFeet, unitTyped, type FieldId, type Typed } from './calculator';

interface CalculatorFieldsProps {
  readonly inputs: readonly InputId[];
  readonly typed: Typed;
  readonly onType: (field: FieldId, text: string) => void;
}

const SEX = { unknown: '', F: '0', M: '1' } as const;

/** One field for each input, in this person's units. */
export const CalculatorFields = ({ inputs, typed, onType }: CalculatorFieldsProps) => {
  const words = useMessages().methodsEntries.calculator;
  const { units } = usePreferences().preferences;
  const field = (id: FieldId, label: string) => (
    <LabelledInput
      key={id}
      label={label}
      type="text"
      inputMode="decimal"
      maxLength={12}
      value={typed[id] ?? ''}
      onChange={(text) => {
        onType(id, text);
      }}
    />
  );
  return inputs.map((input) => {
    const label = words.inputs[input];
    if (input === 'sex_male')
      return (
        <LabelledSelect
          key={input}
          label={label}
          value={typed.sex_male ?? SEX.unknown}
          options={(['unknown', 'F', 'M'] as const).map((sex) => ({ value: SEX[sex], label: words.sexes[sex] }))}
          onChange={(value) => {
            onType('sex_male', value);
          }}
        />
      );
    if (input === 'height_cm' && inFeet(units))
      return [
        field('height_ft', words.withUnit({ label, unit: words.feet })),
        field('height_in', words.withUnit({ label, unit: words.inches })),
      ];
    return field(input, words.withUnit({ label, unit: unitTyped(input, units) }));
  });
};
