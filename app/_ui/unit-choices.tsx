'use client';

import { useMessages, usePreferences } from '../_state/language-provider';
import { LabelledSelect } from './labelled-select';

/** Units and date form: one person's on this machine, so they change no number and no file. */
export const UnitChoices = () => {
  const messages = useMessages().shell;
  const { preferences, setPreferences } = usePreferences();
  const { units, locale } = preferences;
  return (
    <>
      <LabelledSelect
        label={messages.mass}
        value={units.mass}
        options={(['kg', 'lb'] as const).map((mass) => ({ value: mass, label: messages.massUnits[mass] }))}
        onChange={(mass) => {
          setPreferences({ ...preferences, units: { ...units, mass } });
        }}
      />
      <LabelledSelect
        label={messages.length}
        value={units.length}
        options={(['cm', 'ft-in'] as const).map((length) => ({ value: length, label: messages.lengthUnits[length] }))}
        onChange={(length) => {
          setPreferences({ ...preferences, units: { ...units, length } });
        }}
      />
      <LabelledSelect
        label={messages.dates}
        value={locale}
        options={(['en-GB', 'en-US'] as const).map((form) => ({ value: form, label: messages.dateForms[form] }))}
        onChange={(form) => {
          setPreferences({ ...preferences, locale: form });
        }}
      />
    </>
  );
};
