'use client';

import { useCallback, useMemo } from 'react';
import type { Settings } from '../../../lib/cohort/settings';
import { methodChoices, visibleEquations, type MethodChoice } from '../../../lib/workspace/method-choices';
import type { Equation } from '../../../lib/measures/equation';
import { useActing, type Acting } from '../../_state/use-acting';
import { useSession } from '../../_state/workspace-provider';

type Methods = Settings['methods'];

interface ClinicMethods {
  readonly methods: Methods;
  readonly choices: readonly MethodChoice[];
  readonly equations: readonly Equation[];
  readonly acting: Acting;
  /** Saves the settings with these choices; whether it was done. */
  readonly save: (patch: Partial<Methods>, said: string) => Promise<boolean>;
}

/** The open clinic's choice of methods, and the one way to change it. */
export const useClinicMethods = (): ClinicMethods => {
  const { settings } = useSession();
  const acting = useActing();
  const { start } = acting;
  const choices = useMemo(() => methodChoices(settings), [settings]);
  const equations = useMemo(() => visibleEquations(settings), [settings]);
  const save = useCallback(
    (patch: Partial<Methods>, said: string) =>
      start((workspace) => workspace.saveSettings({ ...settings, methods: { ...settings.methods, ...patch } }), said),
    [start, settings],
  );
  return { methods: settings.methods, choices, equations, acting, save };
};
