import { readFileSync } from 'node:fs';
import Papa from 'papaparse';
import { expect, test } from 'vitest';
import type { IsoDate } from '../../lib/core/iso-date';
import { openNodeEngine } from '../../lib/engine/node';
import { inputsOf } from '../../lib/import/inputs-of';
import { openFiles } from '../../lib/workspace/open-files';
import { parseSettings } from '../../lib/workspace/parse-settings';

const TODAY = '2026-01-02' as IsoDate;
const COPIES = 8;

const demo = readFileSync(new URL('../../sample-data/visits.csv', import.meta.url), 'utf8');
const settings = parseSettings(readFileSync(new URL('../../sample-data/settings.json', import.meta.url), 'utf8'));

/** The demo clinic `copies` times over, under other ids. */
const enlarged = (copies: number): Uint8Array => {
  const { data, meta } = Papa.parse<Record<string, string>>(demo, { header: true, skipEmptyLines: true });
  const rows = Array.from({ length: copies }, (_, copy) =>
    data.map((row) => ({ ...row, client_id: `${row['client_id'] ?? ''}-${String(copy)}` })),
  ).flat();
  return new TextEncoder().encode(Papa.unparse(rows, { columns: meta.fields ?? [] }));
};

/** Milliseconds from bytes to the first answer; the better of two runs. */
const cost = async (copies: number): Promise<number> => {
  if (!settings.ok) throw new Error(settings.error.message);
  const bytes = enlarged(copies);
  let best = Infinity;
  for (let run = 0; run < 2; run += 1) {
    const engine = await openNodeEngine();
    const begun = performance.now();
    const file = { name: 'visits.csv', blob: new Blob([new Uint8Array(bytes)]) };
    const { inputs } = await inputsOf([file], { importedOn: TODAY });
    const opened = await openFiles(engine, inputs, settings.value, { today: TODAY });
    if (!opened.ok || opened.value.cohort === undefined) throw new Error('the clinic did not open');
    await opened.value.cohort.programs({ measure: 'ffm', level: 95, comparable: 'strict' }, 'baseline-latest');
    best = Math.min(best, performance.now() - begun);
    await engine.close();
  }
  return best;
};

test('eight times the visits cost at most twelve times the time from file to first answer', async () => {
  const [small, large] = [await cost(1), await cost(COPIES)];
  expect(large / small).toBeLessThan(12);
}, 300_000);
