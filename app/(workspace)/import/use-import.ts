'use client';

import { useCallback, useEffect, useRef, useState } from 'react';
import type { Settings } from '../../../lib/cohort/settings';
import type { Mapping } from '../../../lib/import/mapping';
import { startingSettings } from '../../../lib/workspace/starting-settings';
import type { GivenFile, Session } from '../../../lib/workspace/workspace';
import { useAct } from '../../_state/act-provider';
import { onFilesDropped, pickUpFiles } from '../../_state/dropped-files';
import { useMessages } from '../../_state/language-provider';
import { useSession } from '../../_state/workspace-provider';
import { givenBytes, type ImportState } from './import-state';
import { needsMapping, startWork, toDraft, unreadError, withEditsOf, withTable, type ImportWork } from './import-work';
import { useLongStep } from './use-long-step';

/** The import as a person goes through it: read, columns, plan, answers, keep. */
export const useImport = () => {
  const messages = useMessages();
  const session = useSession();
  const { act } = useAct();
  const { progress, run, cancel: stop } = useLongStep();
  const [state, setState] = useState<ImportState>({ kind: 'idle' });

  const cancel = useCallback(() => {
    stop();
    setState((now) =>
      now.kind === 'reading' && now.before !== null
        ? { kind: 'mapping', work: now.before, error: undefined, busy: false }
        : { kind: 'idle' },
    );
  }, [stop]);

  const plan = useCallback(
    async (work: ImportWork, before: ImportWork | null) => {
      const { given } = work;
      setState({ kind: 'reading', step: 'judging', files: given.length, bytes: givenBytes(given), before });
      const planned = await run((workspace, step) => workspace.plan(toDraft(work), step));
      if (planned === undefined) return;
      if (planned.ok) setState({ kind: 'planned', work, plan: planned.value, updating: false, error: undefined });
      else if (before === null) setState({ kind: 'failed', error: planned.error });
      else setState({ kind: 'mapping', work, error: planned.error, busy: false });
    },
    [run],
  );

  /** Reads files for a clinic; what was decided about the same tables before stays decided. */
  const read = useCallback(
    async (given: readonly GivenFile[], into: string, settings: Settings, edits: ImportWork | null) => {
      setState({ kind: 'reading', step: 'reading', files: given.length, bytes: givenBytes(given), before: null });
      const result = await run((workspace, step) => workspace.read(given, into, step));
      if (result === undefined) return;
      const error = result.ok ? unreadError(result.value) : result.error;
      if (error !== undefined) setState({ kind: 'failed', error });
      else if (result.ok) {
        const fresh = startWork(given, result.value, settings, into);
        const work = edits === null ? fresh : withEditsOf(fresh, edits);
        if (needsMapping(work)) setState({ kind: 'mapping', work, error: undefined, busy: false });
        else await plan(work, null);
      }
    },
    [run, plan],
  );

  const newSettings = useCallback((): Settings => {
    const name = messages.importScreen.clinics.defaultName;
    return { ...startingSettings, clinic: { ...startingSettings.clinic, name } };
  }, [messages]);

  const start = useCallback(
    async (given: readonly GivenFile[]) => {
      if (given.length === 0) return;
      const own = session.clinic.kind === 'own';
      await read(given, own ? session.clinic.id : 'new', own ? session.settings : newSettings(), null);
    },
    [session, read, newSettings],
  );

  /** Another clinic for the same files: a new one, or one that is kept here and is opened for it. */
  const changeInto = useCallback(
    async (work: ImportWork, into: string) => {
      if (into === 'new') {
        await read(work.given, into, newSettings(), work);
        return;
      }
      let opened: Session | undefined;
      const end = await act(async (workspace) => {
        const result = await workspace.switchTo(into);
        if (result.ok) opened = result.value;
        return result;
      });
      if (end.kind === 'failed') setState({ kind: 'failed', error: end.error });
      else if (opened !== undefined) await read(work.given, into, opened.settings, work);
    },
    [act, read, newSettings],
  );

  const changeMapping = useCallback(
    async (work: ImportWork, index: number, mapping: Mapping) => {
      const table = work.tables[index]?.table;
      if (table === undefined) return;
      const answer = await run((workspace) =>
        Promise.resolve({ ok: true as const, value: workspace.questionsOf(table, mapping) }),
      );
      if (answer === undefined) return;
      if (!answer.ok) setState({ kind: 'mapping', work, error: answer.error, busy: false });
      else {
        const next = withTable(work, index, { mapping, questions: answer.value });
        setState({ kind: 'mapping', work: next, error: undefined, busy: false });
      }
    },
    [run],
  );

  const changeHeaderLine = useCallback(
    async (work: ImportWork, index: number, headerLine: number) => {
      const one = work.tables[index];
      const given = one === undefined ? undefined : work.given[one.file];
      if (one === undefined || given === undefined) return;
      setState({ kind: 'mapping', work, error: undefined, busy: true });
      const result = await run((workspace, step) => workspace.readAgain(given, one.table.table, headerLine, step));
      if (result === undefined) return;
      if (!result.ok) setState({ kind: 'mapping', work, error: result.error, busy: false });
      else {
        const { value: table } = result;
        const next = withTable(work, index, { table, mapping: table.mapping, questions: table.questions });
        setState({ kind: 'mapping', work: next, error: undefined, busy: false });
      }
    },
    [run],
  );

  const showMapping = useCallback((work: ImportWork) => {
    setState({ kind: 'mapping', work, error: undefined, busy: false });
  }, []);

  const startNow = useRef(start);
  useEffect(() => {
    startNow.current = start;
  }, [start]);
  useEffect(() => {
    const pickUp = (): void => void startNow.current(pickUpFiles());
    pickUp();
    return onFilesDropped(pickUp);
  }, []);

  return {
    state,
    setState,
    progress,
    run,
    stop,
    start,
    plan,
    changeInto,
    changeMapping,
    changeHeaderLine,
    showMapping,
    cancel,
  };
};

export type Import = ReturnType<typeof useImport>;
