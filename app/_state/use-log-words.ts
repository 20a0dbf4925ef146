'use client';

import { useCallback } from 'react';
import type { LogEntry } from '../../lib/workspace/clinic-state';
import { useFormatters, useMessages } from './language-provider';

/** A log entry's details in words, without the act itself. */
export const useLogDetails = (): ((entry: LogEntry) => string) => {
  const { detail } = useMessages().settingsLog;
  const formatters = useFormatters();
  return useCallback(
    (entry) =>
      Object.entries(entry.details)
        .map(([name, value]) => {
          const words = detail[name];
          if (words !== undefined) return words(value);
          return typeof value === 'number' ? `${name} ${formatters.number(value)}` : value;
        })
        .filter((text) => text !== '')
        .join(', '),
    [detail, formatters],
  );
};

/** What was done, with what it was done to. */
export const useLogWords = (): ((entry: LogEntry) => string) => {
  const { done } = useMessages().settingsLog;
  const details = useLogDetails();
  return useCallback(
    (entry) => {
      const more = details(entry);
      return more === '' ? done[entry.code] : `${done[entry.code]} (${more})`;
    },
    [done, details],
  );
};
