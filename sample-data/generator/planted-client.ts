import { type Sex } from './kyle-ffm';
import { type ProgramName } from './programs';
import { type Column } from './visit-row';

/** One planned reading of a planted client: date, R, Xc, weight, and what differs from the standard. */
export interface PlantedReading {
  readonly date: string;
  readonly r: number | undefined;
  readonly xc: number | undefined;
  readonly weight: number;
  readonly cells?: Partial<Record<Column, string>>;
}

/** A client that is laid down exactly: no noise, no visit beside those listed. */
export interface PlantedClient {
  readonly id: string;
  readonly program: ProgramName;
  readonly sex: Sex;
  readonly birth: string;
  readonly heightCm: number;
  readonly story: string;
  readonly expected: string;
  /** Exported FFM minus computed FFM at Quay; where `ffm_kg` is laid down by hand it is not used. */
  readonly exportOffsetKg: number;
  /** Whether the error-free body follows the readings, or stays as at baseline because all of the change is artefact. */
  readonly body: 'as read' | 'unchanged';
  readonly readings: readonly PlantedReading[];
}

/** A reading with its cells. */
export const at = (
  date: string,
  r: number | undefined,
  xc: number | undefined,
  weight: number,
  cells: Partial<Record<Column, string>> = {},
): PlantedReading => ({ date, r, xc, weight, cells });
