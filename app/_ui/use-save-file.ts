'use client';

import { useCallback, useMemo } from 'react';
import type { MadeFile } from '../../lib/workspace/table-file';
import type { MadeBlob } from '../../lib/workspace/workspace';
import { useAct } from '../_state/act-provider';
import { useMessages } from '../_state/language-provider';
import { useSession, useWorkspace } from '../_state/workspace-provider';
import { saveBlob } from './save-blob';

/** What was exported, as the list of exports words it. */
export type ExportKind =
  | 'table'
  | 'figure'
  | 'rows'
  | 'report'
  | 'person'
  | 'log'
  | 'mapping'
  | 'equation'
  | 'references'
  | 'invitations'
  | 'settings';

interface SaveFile {
  /** A table or figure on screen. Its file's name says where values stand that the clinic corrected. */
  readonly saveFile: (what: ExportKind, file: MadeFile, rows: number) => void;
  readonly saveMade: (what: ExportKind, made: MadeBlob, rows: number) => void;
}

const withCorrections = (name: string): string => name.replace(/(\.[a-z0-9]+)$/i, '-with-corrections$1');

/** Hands a file to the person and enters it in the clinic's list of exports: the one way out for files. */
export const useSaveFile = (): SaveFile => {
  const { run } = useWorkspace();
  const { say } = useAct();
  const messages = useMessages();
  const corrected = useSession().corrections.length > 0;

  const saveMade = useCallback(
    (what: ExportKind, made: MadeBlob, rows: number): void => {
      saveBlob(made);
      void run((workspace) => workspace.noteExport(what, made, rows)).then((error) => {
        if (error !== undefined) say({ text: `${messages.shell.exportNotListed} ${error.message}`, failed: true });
      });
    },
    [run, say, messages],
  );
  const saveFile = useCallback(
    (what: ExportKind, { name, mediaType, text }: MadeFile, rows: number): void => {
      const named = corrected ? withCorrections(name) : name;
      saveMade(what, { name: named, blob: new Blob([text], { type: mediaType }) }, rows);
    },
    [corrected, saveMade],
  );
  return useMemo(() => ({ saveFile, saveMade }), [saveFile, saveMade]);
};
