/** What a tab learns about the clinic it has open. */
export type TabEvent =
  /** This tab may write from now on: the writer left, or crashed. */
  | { readonly kind: 'writer' }
  /** Another tab took the writing over. */
  | { readonly kind: 'taken-over' }
  /** The writer changed the clinic. */
  | { readonly kind: 'changed'; readonly revision: number };

/** A tab's place at one clinic. */
export interface TabSeat {
  readonly isWriter: () => boolean;
  /** Makes this tab the writer; the one that was hears `taken-over`. */
  takeOver(): Promise<void>;
  /** Tells the other tabs at this clinic that it was changed. */
  announceChanged(revision: number): void;
  /** Gives the place up; a waiting tab becomes the writer. */
  leave(): Promise<void>;
}

/**
 * One writing tab for each clinic; the others read and follow. A tab that closes or crashes frees its place by itself.
 * The compare-and-set of the manifest guards what is kept, whatever two tabs believe for a moment.
 */
export interface TabLock {
  /** Takes a place at a clinic: the first comer writes, the others wait for their turn. */
  join(clinicId: string, listener: (event: TabEvent) => void): Promise<TabSeat>;
  /** Runs what keeps files first and the manifest that names them after; any number of tabs at a time. */
  whileKeeping<T>(task: () => Promise<T>): Promise<T>;
  /** Runs what removes files that no manifest names, if no tab is between file and manifest; undefined otherwise. */
  ifNobodyKeeps<T>(task: () => Promise<T>): Promise<T | undefined>;
}

export const writerLock = (clinicId: string): string => `driftline-writer-${clinicId}`;
export const KEEPING_LOCK = 'driftline-keeping';
