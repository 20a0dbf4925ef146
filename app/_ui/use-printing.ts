'use client';

import { useEffect, useState } from 'react';
import { flushSync } from 'react-dom';

/** True while the page is laid out for paper, so that rows out of view can be drawn. */
export const usePrinting = (): boolean => {
  const [printing, setPrinting] = useState(false);
  useEffect(() => {
    const change = (next: boolean) => (): void => {
      flushSync(() => {
        setPrinting(next);
      });
    };
    const before = change(true);
    const after = change(false);
    window.addEventListener('beforeprint', before);
    window.addEventListener('afterprint', after);
    return () => {
      window.removeEventListener('beforeprint', before);
      window.removeEventListener('afterprint', after);
    };
  }, []);
  return printing;
};
