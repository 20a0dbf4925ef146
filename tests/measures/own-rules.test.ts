import { expect, test } from 'vitest';
import { ownRules } from '../../lib/measures/own-rules';
import { rulesInForce } from '../../lib/cohort/rules-in-force';
import { DEFAULT_SETTINGS, settingsSchema, type Settings } from '../../lib/cohort/settings';
import { DEFAULT_RULES } from '../../lib/measures/default-rules';

const withRules = (rules: Settings['rules']): Settings => ({ ...DEFAULT_SETTINGS, rules });

test('the defaults keep nothing of their own', () => {
  expect(ownRules(DEFAULT_RULES)).toEqual([]);
  expect(ownRules(rulesInForce(DEFAULT_SETTINGS))).toEqual([]);
});

test('what is kept is what differs, grade and limit apart, and gives the same table again', () => {
  const own: Settings['rules'] = [
    { id: 'fasting', limit: 6.5 },
    { id: 'exercise', grade: 'off', limit: 24 },
    { id: 'rested', grade: 'no' },
  ];
  const table = rulesInForce(withRules(own));
  expect(ownRules(table)).toEqual(own);
  expect(rulesInForce(settingsSchema.parse({ rules: ownRules(table) }))).toEqual(table);
});

test('a grade or limit that says the default again is not kept', () => {
  expect(ownRules(rulesInForce(withRules([{ id: 'fasting', grade: 'no', limit: 8 }])))).toEqual([]);
});
