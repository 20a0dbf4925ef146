'use client';

import { useEffect, useSyncExternalStore } from 'react';
import {
  EMPTY_DRAFT,
  keepStudyDraft,
  onStudyDraft,
  settleStudyDrafts,
  studyDraft,
  type KeptDraft,
} from '../../_state/study-drafts';
import { useSession } from '../../_state/workspace-provider';

interface StudyDraft {
  readonly draft: KeptDraft;
  readonly keep: (patch: Partial<KeptDraft>) => void;
}

/** The open clinic's study sheet. It is emptied once a clinic holds the very file that was made of it. */
export const useStudyDraft = (): StudyDraft => {
  const { clinic, imports } = useSession();
  const draft = useSyncExternalStore(
    onStudyDraft,
    () => studyDraft(clinic.id),
    () => EMPTY_DRAFT,
  );
  useEffect(() => {
    settleStudyDrafts(new Set(imports.flatMap(({ files }) => files.map(({ sha256 }) => sha256))));
  }, [imports]);
  return {
    draft,
    keep: (patch) => {
      keepStudyDraft(clinic.id, { ...draft, ...patch });
    },
  };
};
