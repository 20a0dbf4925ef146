import type { Settings } from '../cohort/settings';
import type { IsoDate } from '../core/iso-date';
import type { Engine } from '../engine/types';
import { inputsOf } from '../import/inputs-of';
import type { Mapping } from '../import/mapping';
import { openFiles, planOfFailedFiles, type OpenedFiles } from './open-files';
import type { GivenFile } from './workspace';

export interface GivenOptions {
  readonly today: IsoDate;
  readonly asOf?: IsoDate;
  readonly acceptQuestions?: boolean;
  /** Used for tables with exactly their header; other tables are read as suggested. */
  readonly mappings: readonly Mapping[];
}

/** Files as they were given, opened without a clinic: what could not be read or decided stands in the plan. */
export const openGiven = async (
  engine: Engine,
  files: readonly GivenFile[],
  settings: Settings,
  { mappings, ...options }: GivenOptions,
): Promise<OpenedFiles> => {
  const { inputs, failedFiles } = await inputsOf(files, { importedOn: options.today, mappings });
  const opened = await openFiles(engine, inputs, settings, { ...options, failedFiles });
  return opened.ok ? opened.value : { plan: planOfFailedFiles(failedFiles, options.today), cohort: undefined };
};
