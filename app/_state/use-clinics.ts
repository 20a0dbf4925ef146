'use client';

import { useEffect, useState } from 'react';
import type { ClinicRef } from '../../lib/workspace/workspace';
import { openWorkspace } from './open-workspace';
import { useWorkspace } from './workspace-provider';

/** The clinics kept in this browser; asked again whenever another session is open. */
export const useClinics = (): readonly ClinicRef[] | undefined => {
  const { state } = useWorkspace();
  const [clinics, setClinics] = useState<readonly ClinicRef[] | undefined>(undefined);
  useEffect(() => {
    let current = true;
    const ask = async (): Promise<void> => {
      const answer = await (await openWorkspace()).clinics();
      if (current) setClinics(answer.ok ? answer.value : []);
    };
    ask().catch(() => {
      if (current) setClinics([]);
    });
    return () => {
      current = false;
    };
  }, [state]);
  return clinics;
};
