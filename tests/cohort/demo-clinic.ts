import type { Cohort } from '../../lib/cohort/types/cohort';
import type { IsoDate } from '../../lib/core/iso-date';
import type { Engine } from '../../lib/engine/types';
import { inputsOf } from '../../lib/import/inputs-of';
import { openFiles, type OpenedFiles } from '../../lib/workspace/open-files';
import { parseSettings } from '../../lib/workspace/parse-settings';
import { committedFile } from '../sample-data/committed-file';

/** The committed demo clinic in the pipeline, with its own settings. */
export const openDemoClinic = async (engine: Engine): Promise<OpenedFiles & { readonly cohort: Cohort }> => {
  const settings = parseSettings(committedFile('settings.json'));
  if (!settings.ok) throw new Error(settings.error.message);
  const today = '2026-01-02' as IsoDate;
  const file = { name: 'visits.csv', blob: new Blob([committedFile('visits.csv')]) };
  const { inputs } = await inputsOf([file], { importedOn: today });
  const opened = await openFiles(engine, inputs, settings.value, { today });
  if (!opened.ok) throw new Error(opened.error.message);
  const { plan, cohort } = opened.value;
  if (cohort === undefined) throw new Error('the demo clinic holds no visit');
  return { plan, cohort };
};
