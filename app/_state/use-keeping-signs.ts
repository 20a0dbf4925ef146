'use client';

import { useEffect, useState } from 'react';
import type { KeepingSigns } from '../../lib/storage/keeping-signs';

/** What hints at a browser that does not keep what it is given; undefined until it was looked at. */
export const useKeepingSigns = (): KeepingSigns | undefined => {
  const [signs, setSigns] = useState<KeepingSigns | undefined>(undefined);
  useEffect(() => {
    let current = true;
    void import('./browser-kept')
      .then(({ signsAtStart }) => signsAtStart)
      .then((seen) => {
        if (current) setSigns(seen);
      });
    return () => {
      current = false;
    };
  }, []);
  return signs;
};
