'use client';

import { useFormatters, useMessages } from '../../_state/language-provider';
import { useSession } from '../../_state/workspace-provider';
import { useValueWords } from '../../_state/use-value-words';
import type { Wording } from './change-phrase';

/** Words, formats and names of values for sentences about a client. */
export const useWording = (): Wording => {
  const { cohort, settings } = useSession();
  return {
    messages: useMessages(),
    formatters: useFormatters(),
    valueWords: useValueWords(),
    guardsOf: cohort.guards,
    programs: settings.programs,
    lean: cohort.lean,
    errorFrom: cohort.errorFrom,
  };
};
