'use client';

import { useEffect, useState } from 'react';
import type { Workspace } from '../../../lib/workspace/workspace';
import { openWorkspace } from '../../_state/open-workspace';
import { useSession } from '../../_state/workspace-provider';

export type ClientRow = Awaited<ReturnType<Workspace['rowsOf']>>[number];

export type ClientRows =
  { readonly kind: 'asked' | 'failed' } | { readonly kind: 'read'; readonly rows: readonly ClientRow[] };

/** The rows of the open clinic's files for one client, read anew with every data version. */
export const useClientRows = (client: string): ClientRows => {
  const session = useSession();
  const [answer, setAnswer] = useState<ClientRows>({ kind: 'asked' });
  useEffect(() => {
    let current = true;
    const ask = async (): Promise<void> => {
      const rows = await (await openWorkspace()).rowsOf(client);
      if (current) setAnswer({ kind: 'read', rows });
    };
    ask().catch(() => {
      if (current) setAnswer({ kind: 'failed' });
    });
    return () => {
      current = false;
    };
  }, [client, session]);
  return answer;
};
