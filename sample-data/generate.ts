import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { buildClinic } from './generator/build-clinic';
import { clinicFailures } from './generator/checks/clinic-failures';
import { readmeText } from './generator/readme-text';
import { type Replay } from './generator/replay-section';
import { SEED } from './generator/seed';
import { settingsText } from './generator/settings';

const clinic = buildClinic(SEED);
const failures = clinicFailures(clinic);
if (failures.length > 0) {
  throw new Error([`Seed ${SEED} does not give the demo clinic:`, ...failures].join('\n  '));
}

const write = (name: string, text: string): void => {
  writeFileSync(fileURLToPath(new URL(name, import.meta.url)), text);
};

write('visits.csv', clinic.csv);
write('settings.json', settingsText(clinic));
const replay = JSON.parse(readFileSync(fileURLToPath(new URL('replay.json', import.meta.url)), 'utf8')) as Replay;
write('README.md', await readmeText(clinic, replay));
