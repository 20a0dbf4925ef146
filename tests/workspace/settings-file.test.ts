import { expect, test } from 'vitest';
import { settingsSchema } from '../../lib/cohort/settings';
import { settingsFile, settingsFromFile } from '../../lib/workspace/settings-file';

const CLINIC = settingsSchema.parse({
  clinic: { name: 'North' },
  rules: [{ id: 'fasting', grade: 'caution', limit: 4 }],
  comparable: 'caution',
  answers: [{ kind: 'birth-date', client: 'C-0815', date: '1960-05-05' }],
  procedures: [{ site: null, from: null, to: null, conditions: ['rested'], initials: 'AB' }],
});

test('a settings file names no client and gives the same settings again, but for name and answers', () => {
  const text = settingsFile(CLINIC);
  expect(text).not.toContain('C-0815');
  const other = settingsSchema.parse({
    clinic: { name: 'South' },
    answers: [{ kind: 'heights', client: 'C-1' }],
    rules: [{ id: 'rested', grade: 'off' }],
  });
  const read = settingsFromFile(text, other);
  expect(read).toEqual({ ok: true, value: { ...CLINIC, clinic: other.clinic, answers: other.answers } });
});

test('a file that is none says so and where, and changes nothing', () => {
  expect(settingsFromFile('{', CLINIC)).toMatchObject({ ok: false, error: { code: 'settings_not_json' } });
  const wrong = settingsFromFile('{"rules": [{"id": "fasting", "limit": -1}]}', CLINIC);
  expect(wrong).toMatchObject({ ok: false, error: { code: 'settings_unreadable' } });
  expect(wrong.ok ? '' : wrong.error.message).toContain('rules.0.limit');
});
