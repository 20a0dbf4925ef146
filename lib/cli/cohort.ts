import { once } from 'node:events';
import { readFile } from 'node:fs/promises';
import { parseIsoDate, type IsoDate } from '../core/iso-date';
import { openNodeEngine } from '../engine/node';
import { cohortDocument } from '../workspace/cohort-document';
import { mappingsFrom } from '../workspace/mapping-file';
import { openGiven } from '../workspace/open-given';
import { parseSettings } from '../workspace/parse-settings';
import { measuresFrom } from '../workspace/measures-from';
import { cohortArguments, USAGE, type CohortArguments } from './cohort-arguments';
import { readGiven } from './read-given';

const DONE = 0;
const NOTHING_USABLE = 1;
const WRONG_CALL = 2;

const say = (text: string): void => {
  process.stderr.write(`${text}\n`);
};

const wrongCall = (text: string): number => {
  say(text);
  say(USAGE);
  return WRONG_CALL;
};

const localToday = (): IsoDate => {
  const now = new Date();
  const text = `${String(now.getFullYear())}-${String(now.getMonth() + 1).padStart(2, '0')}-${String(now.getDate()).padStart(2, '0')}`;
  const parsed = parseIsoDate(text);
  if (parsed === undefined) throw new Error('the clock gives no date');
  return parsed;
};

const write = async (text: string): Promise<void> => {
  if (!process.stdout.write(text)) await once(process.stdout, 'drain');
};

/** The texts of mapping files, or the path of the first that is not there. */
const readTexts = async (paths: readonly string[]): Promise<readonly (readonly [string, string])[] | string> => {
  const texts: (readonly [string, string])[] = [];
  for (const path of paths) {
    const text = await readFile(path, 'utf8').catch(() => undefined);
    if (text === undefined) return path;
    texts.push([path, text]);
  }
  return texts;
};

const stopQuietlyWithoutReader = (): void => {
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
    process.exit(DONE);
  });
};

const run = async (call: CohortArguments): Promise<number> => {
  const settingsText =
    call.settings === undefined ? '{}' : await readFile(call.settings, 'utf8').catch(() => undefined);
  if (settingsText === undefined) return wrongCall(`${String(call.settings)} cannot be read`);
  const settings = parseSettings(settingsText);
  if (!settings.ok) return wrongCall(`${settings.error.message} ${settings.error.remedy}`);
  const measures = measuresFrom(call.measures, settings.value);
  if (!measures.ok) return wrongCall(measures.error);
  const files = await readGiven(call.files);
  if (typeof files === 'string') return wrongCall(`${files} cannot be read`);
  if (files.length === 0) return wrongCall(`${call.files.join(', ')} holds no file`);
  const texts = await readTexts(call.mappings);
  if (typeof texts === 'string') return wrongCall(`${texts} cannot be read`);
  const mappings = mappingsFrom(texts);
  if (!mappings.ok) return wrongCall(mappings.error);
  const engine = await openNodeEngine();
  try {
    const today = call.today ?? localToday();
    const { plan, cohort } = await openGiven(engine, files, settings.value, {
      today,
      mappings: mappings.value,
      acceptQuestions: call.acceptQuestions,
      ...(call.asOf === undefined ? {} : { asOf: call.asOf }),
    });
    say(
      `${String(plan.rows)} rows: ${String(plan.accepted)} accepted, ${String(plan.held)} with a question, ${String(plan.duplicates)} duplicates, ${String(plan.refused)} not accepted`,
    );
    for (const { name, leftOut = 0 } of plan.files)
      if (leftOut > 0) say(`${name}: ${String(leftOut)} withdrawn records left out`);
    for (const failed of plan.failedFiles) say(`${failed.error.message} ${failed.error.remedy}`);
    const comparable = call.comparable ?? settings.value.comparable ?? 'strict';
    const level = call.level ?? settings.value.level;
    const reviewVisit = call.reviewVisit ?? 'closest';
    const options = { measures: measures.value, level, comparable, reviewVisit };
    for await (const piece of cohortDocument({ plan, cohort }, options)) await write(piece);
    if (cohort === undefined) say('no visit could be used');
    return cohort === undefined ? NOTHING_USABLE : DONE;
  } finally {
    await engine.close();
  }
};

stopQuietlyWithoutReader();
const call = cohortArguments(process.argv.slice(2));
process.exitCode = call.ok ? await run(call.value) : wrongCall(call.error);
