'use client';

import { parseAsInteger, useQueryState } from 'nuqs';

/** The one client whose path is drawn, by the opaque key in the address. */
export const useClientPath = (): { readonly clientKey: number | null; readonly clear: () => void } => {
  const [clientKey, setClientKey] = useQueryState('c', parseAsInteger);
  return { clientKey, clear: () => void setClientKey(null) };
};
