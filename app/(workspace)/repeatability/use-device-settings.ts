'use client';

import type { Settings } from '../../../lib/cohort/settings';
import { useActing, type Acting } from '../../_state/use-acting';
import { useSession } from '../../_state/workspace-provider';

interface DeviceSettings {
  readonly devices: Settings['devices'];
  readonly acting: Acting;
  readonly writer: boolean;
  /** Saves a part of what the clinic knows of its devices; whether it was done. */
  readonly save: (patch: Partial<Settings['devices']>, said: string) => Promise<boolean>;
}

/** The open clinic's devices, and the one way to change what is known of them. */
export const useDeviceSettings = (): DeviceSettings => {
  const { settings, keeping } = useSession();
  const acting = useActing();
  return {
    devices: settings.devices,
    acting,
    writer: keeping.writer,
    save: (patch, said) =>
      acting.start(
        (workspace) => workspace.saveSettings({ ...settings, devices: { ...settings.devices, ...patch } }),
        said,
      ),
  };
};
