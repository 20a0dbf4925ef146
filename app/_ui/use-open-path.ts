'use client';

import { useRouter, useSearchParams } from 'next/navigation';
import { useCallback } from 'react';
import { withFilter } from './with-filter';

/** Goes to a path of this app and carries the filter of the address. */
export const useOpenPath = (): ((href: string) => void) => {
  const router = useRouter();
  const search = useSearchParams();
  return useCallback(
    (href: string) => {
      router.push(withFilter(href, new URLSearchParams(search)));
    },
    [router, search],
  );
};
