import { afterAll, beforeAll, expect, test } from 'vitest';
import { settingsSchema } from '../../lib/cohort/settings';
import type { IsoDate } from '../../lib/core/iso-date';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import { inputsOf } from '../../lib/import/inputs-of';
import { openFiles } from '../../lib/workspace/open-files';
import { isEmptyStudyRow, rowBelow, studyFileOf, type StudySheetDraft } from '../../lib/workspace/study-file';
import { filterFor } from '../cohort/small-clinic';

let engine: Engine;
beforeAll(async () => {
  engine = await openNodeEngine();
});
afterAll(() => engine.close());

const row = (client: string, date: string, weight: string, more: Readonly<Record<string, string>> = {}) => ({
  client_id: client,
  visit_date: date,
  operator: 'AB',
  device_id: 'Unit 1',
  weight_kg: weight,
  r_ohm: '500.0',
  xc_ohm: '50.0',
  ...more,
});

const draft: StudySheetDraft = {
  rows: [
    row('P-1', '2025-02-03', '80.0'),
    row('P-1', '2025-02-05', '80.6'),
    row('P-2', '2025-02-03', '70.2'),
    row('P-2', '2025-02-05', '70.0'),
    row('P-3', '2025-02-05', '-1'),
    { visit_date: '2025-02-05', operator: 'AB', device_id: 'Unit 1' },
  ],
  shared: { site: 'North', posture: 'lying', fasted_h: '11', since_exercise_h: '24', since_alcohol_h: '24' },
  standard: true,
};

test('typed rows are a visit export of purpose precision without empty rows and columns', async () => {
  const { file, rows, sha256 } = await studyFileOf(draft, '2025-02-06');
  const [header, first, ...others] = (await file.blob.text()).split('\r\n');
  expect(file.name).toBe('study-readings-2025-02-06.csv');
  expect(header).toBe(
    'client_id,visit_date,operator,device_id,weight_kg,r_ohm,xc_ohm,visit_purpose,site,posture,fasted_h,since_exercise_h,since_alcohol_h,large_drink,bladder_emptied,rested,contact_ok,acute_illness,medication_changed',
  );
  expect(first).toBe('P-1,2025-02-03,AB,Unit 1,80.0,500.0,50.0,precision,North,lying,11,24,24,n,y,y,y,n,n');
  expect([rows, others.length]).toEqual([5, 5]);
  expect((await studyFileOf(draft, '2025-02-07')).sha256).toBe(sha256);
});

test('the import takes them, refuses what is wrong by line, and the study counts the pairs', async () => {
  const { file } = await studyFileOf(draft, '2025-02-06');
  const today = '2025-02-06' as IsoDate;
  const { inputs } = await inputsOf([file], { importedOn: today });
  const opened = await openFiles(engine, inputs, settingsSchema.parse({}), { today });
  if (!opened.ok) throw new Error(opened.error.message);
  const { plan, cohort } = opened.value;
  expect([plan.rows, plan.accepted, plan.refused]).toEqual([5, 4, 1]);
  expect(plan.findings.find(({ kind }) => kind === 'refused')).toMatchObject({ line: 6, column: 'weight_kg' });
  const study = await cohort?.errorStudy(filterFor('weight'));
  expect(study?.clusters.map(({ client, difference }) => [client, Math.round(10 * difference) / 10])).toEqual([
    ['P-1', 0.6],
    ['P-2', -0.2],
  ]);
});

test('a new row has the day, the operator and the device of the one above, and counts as empty', () => {
  const below = rowBelow(draft.rows[0]);
  expect(below).toEqual({ visit_date: '2025-02-03', operator: 'AB', device_id: 'Unit 1' });
  expect([isEmptyStudyRow(below), isEmptyStudyRow({ ...below, weight_kg: '80' })]).toEqual([true, false]);
  expect(rowBelow(undefined)).toEqual({});
});
