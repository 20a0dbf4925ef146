'use client';

import { useState, type ReactNode } from 'react';
import { useMessages, usePreferences } from '../../_state/language-provider';
import { LabelledInput } from '../../_ui/labelled-input';

/** Whose decision this is: the initials that this person signs with, or a field for them where nobody has said so. */
export const useSignature = (): { readonly initials: string; readonly field: ReactNode } => {
  const words = useMessages().settings.who;
  const { preferences } = usePreferences();
  const [written, setWritten] = useState('');
  const known = preferences.initials;
  return {
    initials: known === '' ? written.trim() : known,
    field:
      known === '' ? (
        <LabelledInput label={words.label} type="text" value={written} onChange={setWritten} maxLength={6} />
      ) : null,
  };
};
