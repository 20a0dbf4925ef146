import { createHash } from 'node:crypto';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import type { IsoDate } from '../../lib/core/iso-date';
import { replayContacts, weeklyUntil } from '../../lib/workspace/contact-replay';
import { parseSettings } from '../../lib/workspace/parse-settings';
import { buildClinic } from '../../sample-data/generator/build-clinic';
import { replayFigures } from '../../sample-data/generator/replay-section';
import { SEED } from '../../sample-data/generator/seed';
import { committedFile, committedReplay } from './committed-file';

const LAST = '2026-01-02' as IsoDate;
const replay = committedReplay();
const digest = (text: string): string => createHash('sha256').update(text).digest('hex');

let engine: Engine;
beforeAll(async () => {
  engine = await openNodeEngine();
});
afterAll(() => engine.close());

test('the committed replay was made of the committed files, for every Friday of 78 weeks (npm run replay)', () => {
  expect([replay.visits, replay.settings]).toEqual([
    digest(committedFile('visits.csv')),
    digest(committedFile('settings.json')),
  ]);
  expect(replay.days.map(({ asOf }) => asOf)).toEqual(weeklyUntil(LAST, 78));
});

test('three of its Fridays come out again, so that a changed rule is found out (npm run replay)', async () => {
  const settings = parseSettings(committedFile('settings.json'));
  if (!settings.ok) throw new Error(settings.error.message);
  const days = ['2025-02-28', '2025-04-25', '2026-01-02'] as IsoDate[];
  const files = [{ name: 'visits.csv', blob: new Blob([committedFile('visits.csv')]) }];
  const again = [];
  for await (const day of replayContacts(engine, files, settings.value, { days, today: LAST })) again.push(day);
  expect(again).toEqual(replay.days.filter(({ asOf }) => days.includes(asOf as IsoDate)));
});

test('Talk to gains at most three rows a week, a third of them planted losers, and finds eleven of the eighteen', () => {
  const figures = replayFigures(replay, buildClinic(SEED));
  expect(figures.weeks).toBe(78);
  expect(figures.added / figures.weeks).toBeLessThanOrEqual(3);
  expect(figures.addedPlanted / figures.added).toBeGreaterThanOrEqual(1 / 3);
  expect(figures.losers).toBe(18);
  expect(figures.losersFound).toBeGreaterThanOrEqual(11);
});
