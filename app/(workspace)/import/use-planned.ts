'use client';

import { useCallback } from 'react';
import type { Settings } from '../../../lib/cohort/settings';
import type { Session } from '../../../lib/workspace/workspace';
import { useAct } from '../../_state/act-provider';
import { useSession } from '../../_state/workspace-provider';
import { toDraft } from './import-work';
import type { Import } from './use-import';

/** What can be done with a plan: answer, name the clinic, keep. A plan that is being kept can be stopped. */
export const usePlanned = ({ state, setState, run }: Import) => {
  const { act } = useAct();
  const { imports: before, clinic, plan: planBefore } = useSession();

  const change = useCallback(
    async (settings: Settings) => {
      if (state.kind !== 'planned') return;
      const work = { ...state.work, settings };
      setState({ ...state, work, updating: true, error: undefined });
      const planned = await run((workspace, step) => workspace.plan(toDraft(work), step));
      if (planned === undefined) return;
      if (planned.ok) setState({ kind: 'planned', work, plan: planned.value, updating: false, error: undefined });
      else setState({ ...state, updating: false, error: planned.error });
    },
    [state, setState, run],
  );

  const rename = useCallback(
    (name: string) => {
      setState((now) => {
        if (now.kind !== 'planned') return now;
        const { settings } = now.work;
        const clinic = { ...settings.clinic, name };
        return { ...now, work: { ...now.work, settings: { ...settings, clinic } } };
      });
    },
    [setState],
  );

  const commit = useCallback(async () => {
    if (state.kind !== 'planned' || state.updating) return;
    const { work, plan } = state;
    let opened: Session | undefined;
    let stopped = false;
    const end = await act(async () => {
      setState({ kind: 'keeping', rows: plan.accepted, work, plan });
      const result = await run((workspace, step) => workspace.commit(plan, toDraft(work), step), true);
      if (result?.ok === true) opened = result.value;
      stopped = result === undefined;
      return result ?? { ok: false, error: { code: 'cancelled', message: '', remedy: '' } };
    });
    const back = { kind: 'planned' as const, work, plan, updating: false };
    if (opened !== undefined) {
      const files = work.read.files.filter(({ error }) => error === null).length;
      const importId = opened.imports.find(({ id }) => before.every((known) => known.id !== id))?.id ?? null;
      const held = work.into === clinic.id ? planBefore.accepted : 0;
      const rows = Math.max(0, plan.accepted - held);
      setState({ kind: 'done', rows, held: plan.accepted, files, importId, difference: opened.difference });
    } else setState({ ...back, error: end.kind === 'failed' && !stopped ? end.error : undefined });
  }, [state, setState, act, run, before, clinic, planBefore]);

  return { change, rename, commit };
};
