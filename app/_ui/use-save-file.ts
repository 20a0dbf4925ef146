'use client';

import { useCallback, useMemo } from 'react';
import type { MadeFile } from '../../lib/workspace/table-file';
import type { MadeBlob } from '../../lib/workspace/workspace';
import { useAct } from '../_state/act-provider';
import { useMessages } from '../_state/language-provider';
import { useSession } from '../_state/workspace-provider';
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
  /** Whether the file was handed over: not where the person, asked for initials, would rather not. */
  readonly saveMade: (what: ExportKind, made: MadeBlob, rows: number) => Promise<boolean>;
}

const withCorrections = (name: string): string => name.replace(/(\.[a-z0-9]+)$/i, '-with-corrections$1');

/** Hands a file to the person and enters it, signed, in the clinic's list of exports: the one way out for files. */
export const useSaveFile = (): SaveFile => {
  const { act, say } = useAct();
  const messages = useMessages();
  const corrected = useSession().corrections.length > 0;

  const saveMade = useCallback(
    async (what: ExportKind, made: MadeBlob, rows: number): Promise<boolean> => {
      const end = await act((workspace) => {
        saveBlob(made);
        return workspace.noteExport(what, made, rows);
      });
      if (end.kind === 'failed') say({ text: `${messages.shell.exportNotListed} ${end.error.message}`, failed: true });
      return end.kind !== 'left';
    },
    [act, say, messages],
  );
  const saveFile = useCallback(
    (what: ExportKind, { name, mediaType, text }: MadeFile, rows: number): void => {
      const named = corrected ? withCorrections(name) : name;
      void saveMade(what, { name: named, blob: new Blob([text], { type: mediaType }) }, rows);
    },
    [corrected, saveMade],
  );
  return useMemo(() => ({ saveFile, saveMade }), [saveFile, saveMade]);
};
