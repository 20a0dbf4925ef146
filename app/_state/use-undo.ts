'use client';

import { useCallback } from 'react';
import { useAct } from './act-provider';
import { useMessages } from './language-provider';
import { useLogWords } from './use-log-words';
import { useWorkspace } from './workspace-provider';

export interface Undo {
  /** What undo would take back, in words; undefined where there is nothing, or this tab only reads. */
  readonly undoes: string | undefined;
  readonly redoes: string | undefined;
  readonly undo: () => void;
  readonly redo: () => void;
}

/** The way back and forth through the changes of the open clinic; what was done is said in the line at the foot. */
export const useUndo = (): Undo => {
  const { state } = useWorkspace();
  const { act, say } = useAct();
  const messages = useMessages();
  const logWords = useLogWords();
  const session = state.kind === 'open' && state.session.keeping.writer ? state.session : undefined;
  const undoes = session === undefined || session.undoes === null ? undefined : logWords(session.undoes);
  const redoes = session === undefined || session.redoes === null ? undefined : logWords(session.redoes);

  const go = useCallback(
    async (direction: 'undo' | 'redo', what: string | undefined) => {
      if (what === undefined) return;
      const end = await act((workspace) => workspace[direction]());
      const words = messages.settingsLog;
      if (end.kind === 'done')
        say({ text: (direction === 'undo' ? words.undone : words.redone)({ what }), failed: false });
      if (end.kind === 'failed') say({ text: `${end.error.message} ${end.error.remedy}`, failed: true });
    },
    [act, say, messages],
  );
  const undo = useCallback(() => void go('undo', undoes), [go, undoes]);
  const redo = useCallback(() => void go('redo', redoes), [go, redoes]);
  return { undoes, redoes, undo, redo };
};
