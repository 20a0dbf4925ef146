import type { IsoDate } from '../../core/iso-date';
import type { AnyMeasureId } from '../../measures/measure-id';
import type { LimitsOfAgreement } from '../../stats/limits-of-agreement';
import type { DeviceConversion } from '../settings-parts/device-settings';

/** One person on both devices, in the value's unit. */
export interface CrossCheckPoint {
  readonly clientKey: number;
  readonly client: string;
  readonly date: IsoDate;
  readonly first: number;
  readonly second: number;
}

/** Second device minus first, of one value. */
export interface CrossCheckValue {
  readonly measure: AnyMeasureId;
  readonly points: readonly CrossCheckPoint[];
  /** Undefined for fewer than three people. */
  readonly agreement: LimitsOfAgreement | undefined;
}

/** Two devices measured against each other. */
export interface CrossCheck {
  readonly first: string;
  readonly second: string;
  readonly people: number;
  /** People left out as not comparable apart from the device. */
  readonly leftOut: number;
  /** 30 people or more. */
  readonly enough: boolean;
  readonly values: readonly CrossCheckValue[];
  /** What a person accepted; it holds as long as the data still have enough people. */
  readonly accepted: DeviceConversion | null;
}
