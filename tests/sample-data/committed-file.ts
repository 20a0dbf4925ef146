import { readFileSync } from 'node:fs';
import Papa from 'papaparse';
import { type Replay } from '../../sample-data/generator/replay-section';
import { type VisitRow } from '../../sample-data/generator/visit-row';

/** A file of the demo clinic as it is committed. */
export const committedFile = (name: 'visits.csv' | 'settings.json' | 'README.md' | 'replay.json'): string =>
  readFileSync(new URL(`../../sample-data/${name}`, import.meta.url), 'utf8');

/** The committed rows, read by a CSV reader that is not the generator's. */
export const committedRows = (): VisitRow[] =>
  Papa.parse<VisitRow>(committedFile('visits.csv'), { header: true, skipEmptyLines: true }).data;

/** The committed replay of the contact lists. */
export const committedReplay = (): Replay => JSON.parse(committedFile('replay.json')) as Replay;
