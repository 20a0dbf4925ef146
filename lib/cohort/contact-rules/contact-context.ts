import type { IsoDate } from '../../core/iso-date';
import type { Row } from '../../engine/types';
import type { CohortModel } from '../model';
import type { Settings } from '../settings';
import type { CohortErrors } from '../types/precision-row';

/** What the contact lists are made under. */
export interface ContactContext {
  readonly asOf: IsoDate;
  readonly model: CohortModel;
  readonly settings: Settings;
  readonly errors: CohortErrors;
}

/** How many of the last values a row shows. */
export const STRIP_LENGTH = 5;

/** A number of a row; nothing reads as zero. */
export const numberIn = (row: Row, name: string): number => Number(row[name] ?? 0);
