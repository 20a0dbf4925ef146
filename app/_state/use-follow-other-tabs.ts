'use client';

import { useEffect } from 'react';
import { openWorkspace } from './open-workspace';
import { useWorkspace } from './workspace-provider';

/** Shows what another tab did: the clinic is opened anew, or what keeps it from opening. */
export const useFollowOtherTabs = (): void => {
  const { run, retry } = useWorkspace();
  useEffect(() => {
    let stopped = false;
    let stop: (() => void) | undefined;
    const follow = async (): Promise<void> => {
      const error = await run((workspace) => workspace.open());
      if (error !== undefined && !stopped) retry();
    };
    void openWorkspace().then(
      (workspace) => {
        if (!stopped) stop = workspace.onChangedElsewhere(() => void follow());
      },
      () => undefined,
    );
    return () => {
      stopped = true;
      stop?.();
    };
  }, [run, retry]);
};
