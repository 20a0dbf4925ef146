/** How far a long step is. `total` is null where it cannot be known before the end. */
export interface Progress {
  readonly step: 'reading' | 'hashing' | 'judging' | 'keeping' | 'building' | 'sealing' | 'packing';
  readonly file: string;
  readonly bytes: number;
  readonly totalBytes: number | null;
  readonly rows: number;
}

/** What a long step takes beside its input. */
export interface LongStep {
  readonly signal?: AbortSignal | undefined;
  readonly onProgress?: ((progress: Progress) => void) | undefined;
}
