import { describe, expect, test } from 'vitest';
import { DEFAULT_SETTINGS } from '../../lib/cohort/settings';
import { parseSettings } from '../../lib/workspace/parse-settings';
import { committedFile } from '../sample-data/committed-file';

const messageOf = (settings: unknown): string => {
  const parsed = parseSettings(JSON.stringify(settings));
  return parsed.ok ? '' : parsed.error.message;
};

describe('settings', () => {
  test('are complete without a word: 95 %, own error, no procedure', () => {
    expect(DEFAULT_SETTINGS).toMatchObject({
      level: 95,
      leanMeasure: 'ffm',
      checkUpsProgram: 'Check-ups only',
      words: { client: 'client' },
      errorSource: { kind: 'own', alwaysT: false },
      procedures: [],
      rules: [],
      programs: [],
    });
  });

  test('of the demo clinic are read', () => {
    const parsed = parseSettings(committedFile('settings.json'));
    expect(parsed.ok && parsed.value.clinic).toEqual({ name: 'Oremoor Clinic', invented: true });
  });

  test.each([
    ['an unknown key', { colour: 'red' }, 'colour'],
    ['an unknown key of a program', { programs: [{ name: 'Walking', colour: 'red' }] }, 'programs.0'],
    ['a level that is not offered', { level: 99 }, 'level'],
    ['a word that is not offered', { words: { client: 'guest' } }, 'words.client'],
    ['a rule that does not exist', { rules: [{ id: 'mood' }] }, 'rules.0.id'],
    ['a value that does not exist', { leanMeasure: 'muscle' }, 'leanMeasure'],
    [
      'a date in another form',
      { procedures: [{ site: 'North', from: '6 January', to: null, conditions: ['rested'], initials: '' }] },
      'procedures.0.from',
    ],
    [
      'an error that is no error',
      { errorSource: { kind: 'entered', values: [{ measure: 'ffm', betweenDaySd: 0, df: 30 }] } },
      'errorSource.values.0.betweenDaySd',
    ],
    ['an answer of an unknown kind', { answers: [{ kind: 'guess' }] }, 'answers.0.kind'],
  ])('refuse %s and name the place', (_what, settings, place) => {
    expect(messageOf(settings)).toContain(place);
  });

  test.each([
    ['an equation that does not exist', { ffm: 'ffm-kyle-2010' }, 'methods.equations.ffm: there is no equation'],
    ['an equation of another quantity', { asm: 'smm-janssen-2000' }, 'methods.equations.asm: there is no equation'],
    ['an equation from memory', { ffm: 'ffm-sun-2003' }, 'ffm-sun-2003” is from memory'],
  ])('refuse %s rather than compute with another', (_what, equations, said) => {
    expect(messageOf({ methods: { equations } })).toContain(said);
  });

  test('take an equation from memory that is switched on, and none at all', () => {
    const equations = { ffm: 'ffm-sun-2003', smm: null };
    expect(messageOf({ methods: { equations, switchedOn: ['ffm-sun-2003'] } })).toBe('');
  });
});
