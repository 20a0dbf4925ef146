'use client';

import { useVirtualizer } from '@tanstack/react-virtual';
import { useState } from 'react';
import { usePrinting } from './use-printing';

/** More rows than this are drawn only where they are in view. */
const DRAWN_WHOLE = 60;
/** More rows than this are not put on paper. */
export const PRINTED_ROWS = 1000;
const ROW_HEIGHT = 34;

/** Which rows of a long table are drawn, and the heights that stand for the others. */
export const useRowWindow = (count: number) => {
  const [scroller, setScroller] = useState<HTMLDivElement | null>(null);
  const printing = usePrinting();
  const long = count > DRAWN_WHOLE;
  const virtualizer = useVirtualizer({
    count: long ? count : 0,
    getScrollElement: () => scroller,
    estimateSize: () => ROW_HEIGHT,
    overscan: 12,
    initialRect: { width: 0, height: 640 },
  });
  const items = virtualizer.getVirtualItems();
  const windowed = long && !printing;
  const drawn = windowed
    ? items.map(({ index }) => index)
    : Array.from({ length: printing ? Math.min(count, PRINTED_ROWS) : count }, (_, index) => index);
  const before = windowed ? (items[0]?.start ?? 0) : 0;
  const after = windowed ? virtualizer.getTotalSize() - (items[items.length - 1]?.end ?? 0) : 0;
  const reveal = (index: number): void => {
    if (windowed) virtualizer.scrollToIndex(index);
  };
  return { setScroller, long, printing, drawn, before, after, reveal, measure: virtualizer.measureElement };
};
