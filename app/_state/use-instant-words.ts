'use client';

import { useMemo, useState } from 'react';
import { useFormatters } from './language-provider';

const DAY_MS = 86_400_000;

export interface InstantWords {
  /** `4 Mar 2025, 14:05` in this machine's time zone. */
  readonly at: (instant: string) => string;
  /** `today`, `12 days ago`, by calendar days of this machine. */
  readonly ago: (instant: string) => string;
}

const midnight = (time: Date): number => new Date(time.getFullYear(), time.getMonth(), time.getDate()).getTime();

/** When something was done, as this person reads it. */
export const useInstantWords = (): InstantWords => {
  const { locale } = useFormatters();
  const [now] = useState(() => new Date());
  return useMemo(() => {
    const exact = new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeStyle: 'short' });
    const relative = new Intl.RelativeTimeFormat(locale, { numeric: 'auto' });
    return {
      at: (instant) => exact.format(new Date(instant)),
      ago: (instant) => {
        const days = Math.round((midnight(new Date(instant)) - midnight(now)) / DAY_MS);
        return relative.format(Math.min(days, 0), 'day');
      },
    };
  }, [locale, now]);
};
