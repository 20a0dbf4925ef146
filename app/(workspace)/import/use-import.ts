'use client';

import { useCallback, useEffect, useRef, useState } from 'react';
import type { Settings } from '../../../lib/cohort/settings';
import type { AppError } from '../../../lib/core/app-error';
import type { Result } from '../../../lib/core/result';
import type { ImportPlan } from '../../../lib/import/plan';
import type { GivenFile } from '../../../lib/workspace/session';
import { startingSettings } from '../../../lib/workspace/starting-settings';
import { asAppError } from '../../_state/as-app-error';
import { onFilesDropped, pickUpFiles } from '../../_state/dropped-files';
import { useMessages } from '../../_state/language-provider';
import { openWorkspace } from '../../_state/open-workspace';
import { useSession, useWorkspace } from '../../_state/workspace-provider';
import { readGivenFiles } from './read-given-files';

/** Where an import stands. Nothing is kept before `keeping`. */
export type ImportState =
  | { readonly kind: 'idle' }
  | { readonly kind: 'reading'; readonly files: number; readonly bytes: number }
  | {
      readonly kind: 'planned';
      readonly files: readonly GivenFile[];
      readonly plan: ImportPlan;
      readonly settings: Settings;
      readonly updating: boolean;
    }
  | { readonly kind: 'failed'; readonly error: AppError }
  | { readonly kind: 'keeping'; readonly rows: number }
  | { readonly kind: 'done'; readonly rows: number; readonly files: number };

/** Why nothing of what was given could be read, though files kept earlier can. */
const unreadError = (files: readonly GivenFile[], plan: ImportPlan): AppError | undefined => {
  const failed = files.map(({ name }) => plan.failedFiles.find((file) => file.name === name));
  return failed.includes(undefined) ? undefined : failed[0]?.error;
};

/** The import as a person goes through it: read, plan, answer, keep. A later start makes an earlier answer void. */
export const useImport = () => {
  const messages = useMessages();
  const session = useSession();
  const { run } = useWorkspace();
  const [state, setState] = useState<ImportState>({ kind: 'idle' });
  const turn = useRef(0);

  const cancel = useCallback(() => {
    turn.current += 1;
    setState({ kind: 'idle' });
  }, []);

  const plan = useCallback(
    async (files: readonly GivenFile[], settings: Settings): Promise<Result<ImportPlan, AppError>> => {
      try {
        return await (await openWorkspace()).plan(files, settings);
      } catch (reason) {
        return { ok: false, error: asAppError(reason, messages) };
      }
    },
    [messages],
  );

  const ownSettings = useCallback(async (): Promise<Settings> => {
    if (session.clinic.id === 'own') return session.settings;
    const name = messages.importScreen.clinics.defaultName;
    let settings: Settings = { ...startingSettings, clinic: { ...startingSettings.clinic, name } };
    const workspace = await openWorkspace();
    if (!(await workspace.hasOwn())) return settings;
    await run(async (open) => {
      const result = await open.switchTo('own');
      if (result.ok) settings = result.value.settings;
      return result;
    });
    return settings;
  }, [session, run, messages]);

  const start = useCallback(
    async (given: readonly File[]) => {
      if (given.length === 0) return;
      turn.current += 1;
      const own = turn.current;
      setState({ kind: 'reading', files: given.length, bytes: given.reduce((sum, file) => sum + file.size, 0) });
      const read = await readGivenFiles(given, messages.importScreen);
      const settings = await ownSettings();
      const planned = read.ok ? await plan(read.value, settings) : read;
      if (own !== turn.current) return;
      const error = read.ok ? (planned.ok ? unreadError(read.value, planned.value) : planned.error) : read.error;
      if (error !== undefined) setState({ kind: 'failed', error });
      else if (read.ok && planned.ok)
        setState({ kind: 'planned', files: read.value, plan: planned.value, settings, updating: false });
    },
    [messages, ownSettings, plan],
  );

  const change = useCallback(
    async (settings: Settings) => {
      if (state.kind !== 'planned') return;
      turn.current += 1;
      const own = turn.current;
      setState({ ...state, settings, updating: true });
      const planned = await plan(state.files, settings);
      if (own !== turn.current) return;
      if (planned.ok) setState({ ...state, settings, plan: planned.value, updating: false });
      else setState({ kind: 'failed', error: planned.error });
    },
    [state, plan],
  );

  const rename = useCallback((name: string) => {
    setState((now) =>
      now.kind === 'planned'
        ? { ...now, settings: { ...now.settings, clinic: { ...now.settings.clinic, name } } }
        : now,
    );
  }, []);

  const commit = useCallback(async () => {
    if (state.kind !== 'planned' || state.updating) return;
    const { plan: previewed, settings } = state;
    setState({ kind: 'keeping', rows: previewed.accepted });
    const error = await run((workspace) => workspace.commit(previewed, settings));
    setState(
      error === undefined
        ? { kind: 'done', rows: previewed.accepted, files: previewed.files.length }
        : { kind: 'failed', error },
    );
  }, [state, run]);

  const startNow = useRef(start);
  useEffect(() => {
    startNow.current = start;
  }, [start]);
  useEffect(() => {
    const pickUp = (): void => void startNow.current(pickUpFiles());
    pickUp();
    return onFilesDropped(pickUp);
  }, []);

  return { state, start, change, rename, commit, cancel };
};
