import { DEFAULT_SETTINGS, type Settings } from '../cohort/settings';

/** The settings that a clinic starts with. */
export const startingSettings: Settings = DEFAULT_SETTINGS;
