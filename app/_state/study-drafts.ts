import { isEmptyStudyRow, type StudySheetDraft } from '../../lib/workspace/study-file';

/** A study sheet with the hash of the file that was last made of it, by which a kept one is known. */
export interface KeptDraft extends StudySheetDraft {
  readonly handedOver: string | null;
  /** How many of its rows a clinic holds since they were typed; null for none. */
  readonly imported: number | null;
}

export const EMPTY_DRAFT: KeptDraft = { rows: [{}], shared: {}, standard: false, handedOver: null, imported: null };

const drafts = new Map<string, KeptDraft>();
const listeners = new Set<() => void>();

const holdsRows = (): boolean => [...drafts.values()].some(({ rows }) => rows.some((row) => !isEmptyStudyRow(row)));

const warn = (event: BeforeUnloadEvent): void => {
  event.preventDefault();
};

/** Typed rows of one clinic that are not imported yet. In the memory of this tab alone: they name people. */
export const studyDraft = (clinic: string): KeptDraft => drafts.get(clinic) ?? EMPTY_DRAFT;

/** Keeps what was typed; the browser asks before a reload would lose it. */
export const keepStudyDraft = (clinic: string, draft: KeptDraft): void => {
  drafts.set(clinic, draft);
  window.removeEventListener('beforeunload', warn);
  if (holdsRows()) window.addEventListener('beforeunload', warn);
  for (const tell of listeners) tell();
};

/**
 * Empties the drafts whose file a clinic holds by now, wherever they were typed.
 *
 * @param held hashes of the files that the open clinic holds.
 */
export const settleStudyDrafts = (held: ReadonlySet<string>): void => {
  for (const [clinic, draft] of drafts) {
    if (draft.handedOver === null || !held.has(draft.handedOver)) continue;
    const imported = draft.rows.filter((row) => !isEmptyStudyRow(row)).length;
    keepStudyDraft(clinic, { ...EMPTY_DRAFT, shared: draft.shared, standard: draft.standard, imported });
  }
};

/** Calls back whenever a draft changes; gives the function that stops it. */
export const onStudyDraft = (tell: () => void): (() => void) => {
  listeners.add(tell);
  return () => {
    listeners.delete(tell);
  };
};
