'use client';

import { useMemo } from 'react';
import type { FigureContext } from '../../lib/figures/figure-context';
import { useFormatters, useMessages } from '../_state/language-provider';

/** What a figure needs beside its data: this person's numbers and words, and its size in pixels. */
export const useFigureContext = (size?: { readonly width?: number; readonly height?: number }): FigureContext => {
  const formatters = useFormatters();
  const { figures: words } = useMessages();
  const { width, height } = size ?? {};
  return useMemo(
    () => ({
      formatters,
      words,
      ...(width === undefined ? {} : { width }),
      ...(height === undefined ? {} : { height }),
    }),
    [formatters, words, width, height],
  );
};
