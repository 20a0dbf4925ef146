'use client';

import { useMemo } from 'react';
import type { ContactLists } from '../../../lib/cohort/types/contact-lists';
import { callsIn, talkToState, type ContactCall, type TalkToState } from '../../../lib/workspace/contact-calls';
import { useSession } from '../../_state/workspace-provider';

/** Talk to as it stands after the calls that were made, the same on every screen. */
export const useTalkTo = ({ talkTo }: ContactLists): TalkToState & { readonly calls: readonly ContactCall[] } => {
  const { marks } = useSession();
  return useMemo(() => {
    const calls = callsIn(marks);
    return { ...talkToState(talkTo, calls), calls };
  }, [talkTo, marks]);
};
