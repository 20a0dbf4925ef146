import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parseIsoDate } from '../core/iso-date';
import { openNodeEngine } from '../engine/node';
import { replayContacts, weeklyUntil } from '../workspace/contact-replay';
import { parseSettings } from '../workspace/parse-settings';

const WEEKS = 78;

const place = (name: string): string => fileURLToPath(new URL(`../../sample-data/${name}`, import.meta.url));
const read = (name: string): string => readFileSync(place(name), 'utf8');
const digest = (text: string): string => createHash('sha256').update(text).digest('hex');

const [visits, settingsText] = [read('visits.csv'), read('settings.json')];
const settings = parseSettings(settingsText);
const last = parseIsoDate('2026-01-02');
if (!settings.ok || last === undefined) throw new Error('the demo clinic’s settings cannot be read');

const engine = await openNodeEngine();
const lines: string[] = [];
try {
  const files = [{ name: 'visits.csv', blob: new Blob([visits]) }];
  const days = weeklyUntil(last, WEEKS);
  for await (const day of replayContacts(engine, files, settings.value, { days, today: last })) {
    lines.push(JSON.stringify(day));
    process.stderr.write(`${day.asOf}: ${String(Object.keys(day.talkTo).length)} to talk to\n`);
  }
} finally {
  await engine.close();
}

const head = `{"visits":"${digest(visits)}","settings":"${digest(settingsText)}","days":[\n`;
writeFileSync(place('replay.json'), `${head}${lines.join(',\n')}\n]}\n`);
