'use client';

import type { Reason } from '../../lib/cohort/types/change-row';
import { useFormatters, useMessages } from './language-provider';

/** Reasons as one phrase: *another device and not rested*. */
export const useReasonWords = (): ((reasons: readonly Reason[]) => string) => {
  const messages = useMessages();
  const formatters = useFormatters();
  return (reasons) => formatters.list(reasons.map((reason) => messages.reasons.short[reason]));
};
