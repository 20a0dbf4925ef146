import type { DeviceStep } from './settings-parts/device-settings';

/** A device between two steps. Days from `from` to before `to`; the first has no name of its own. */
export interface DeviceEra {
  readonly device: string;
  readonly from: string | null;
  readonly to: string | null;
  /** What visits call the device then. */
  readonly label: string;
}

/** The eras that a clinic's steps cut its devices into; devices without a step are not among them. */
export const deviceErasOf = (steps: readonly DeviceStep[]): readonly DeviceEra[] =>
  [...new Set(steps.map(({ device }) => device))].sort().flatMap((device) => {
    const days = [...new Set(steps.filter((step) => step.device === device).map(({ on }) => on))].sort();
    return [null, ...days].map((from, index) => ({
      device,
      from,
      to: days[index] ?? null,
      label: from === null ? device : `${device} (from ${from})`,
    }));
  });
