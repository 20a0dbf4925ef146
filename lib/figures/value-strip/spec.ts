import type { IsoDate } from '../../core/iso-date';
import type { Ucum } from '../../core/units';
import type { LanePointState } from '../time-lanes/spec';

export interface ValueStripData {
  readonly title: string;
  readonly unit: Ucum;
  readonly digits: number;
  /** In order of date; the last five are drawn. */
  readonly points: readonly {
    readonly key: string;
    readonly date: IsoDate;
    readonly value: number;
    readonly state: LanePointState;
  }[];
  readonly baseline?: number;
  readonly leastSignificantChange?: number;
}

export interface ValueStripPoint {
  readonly key: string;
  readonly value: number;
  readonly state: LanePointState;
  readonly label: string;
  readonly dateLabel: string;
  readonly valueLabel: string;
}

/** The last five values of one client in the error band, small enough for a row of a list. */
export interface ValueStripSpec {
  readonly kind: 'value-strip';
  readonly width: number;
  readonly height: number;
  readonly title: string;
  readonly domain: readonly [number, number];
  readonly points: readonly ValueStripPoint[];
  readonly baseline?: number;
  readonly band?: readonly [number, number];
}
