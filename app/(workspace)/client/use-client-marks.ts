'use client';

import { useMemo } from 'react';
import { clientMarks, type ClientMarks } from '../../../lib/workspace/client-marks';
import { useSession } from '../../_state/workspace-provider';

/** What the clinic keeps about a client beside the files. */
export const useClientMarks = (client: string): ClientMarks => {
  const { marks, settings } = useSession();
  return useMemo(() => clientMarks({ marks, settings }, client), [marks, settings, client]);
};
