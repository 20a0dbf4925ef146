import { describe, expect, it } from 'vitest';
import { withAnswer, withoutAnswer } from '../../app/(workspace)/import/answers';
import { conditionsOf, procedureFault } from '../../app/(workspace)/import/procedure-conditions';
import { enteredValues, errorSourceOf } from '../../app/(workspace)/import/entered-errors';
import { shownCell } from '../../app/(workspace)/import/shown-cell';
import { openQuestions } from '../../app/(workspace)/import/stack-questions';
import { DEFAULT_SETTINGS, type Answer } from '../../lib/cohort/settings';
import type { Finding, PersonQuestion, ReadingQuestion } from '../../lib/import/plan';

const farOff = (decision: 'keep' | 'refuse', value = '5'): Answer => ({
  kind: 'far-off',
  client: 'OM-0001',
  visitDate: '2025-03-04',
  column: 'r_ohm',
  value,
  decision,
});

describe('answers to an import’s questions', () => {
  it('replace an earlier answer to the same question and leave others alone', () => {
    const settings = withAnswer(withAnswer(DEFAULT_SETTINGS, farOff('keep')), farOff('keep', '6'));
    expect(withAnswer(settings, farOff('refuse')).answers).toEqual([farOff('keep', '6'), farOff('refuse')]);
  });

  it('can be taken back', () => {
    const settings = withAnswer(withAnswer(DEFAULT_SETTINGS, farOff('keep')), farOff('keep', '6'));
    expect(withoutAnswer(settings, farOff('refuse')).answers).toEqual([farOff('keep', '6')]);
  });

  it('about two ids are one question, whichever way it is answered and in whichever order they stand', () => {
    const same: Answer = { kind: 'same-client', ids: ['om 1', 'OM-1'], client: 'OM-1' };
    const settings = withAnswer(DEFAULT_SETTINGS, same);
    const different: Answer = { kind: 'different-clients', ids: ['OM-1', 'om 1'] };
    expect(withAnswer(settings, different).answers).toEqual([different]);
  });
});

describe('conditions that files do not record', () => {
  it('are asked for only where a written procedure can stand for them', () => {
    expect(conditionsOf(['fasted_h', 'rested', 'device_id'])).toEqual(['fasting', 'rested']);
    expect(conditionsOf(['device_id'])).toEqual([]);
  });

  const procedure = { site: null, from: null, to: null, conditions: ['rested' as const], initials: 'AB' };

  it('can be declared with a condition, initials and a period that does not run backwards', () => {
    expect(procedureFault(procedure)).toBeUndefined();
    expect(procedureFault({ ...procedure, from: '2025-01-01', to: '2025-01-01' })).toBeUndefined();
    expect(procedureFault({ ...procedure, conditions: [] })).toBe('needsCondition');
    expect(procedureFault({ ...procedure, initials: '' })).toBe('needsInitials');
    expect(procedureFault({ ...procedure, from: '2025-02-01', to: '2025-01-01' })).toBe('wrongPeriod');
  });
});

describe('a cell as it is shown', () => {
  it('stays text, whatever it holds', () => {
    const markup = '<img src=x onerror=alert(1)>';
    expect(shownCell(markup)).toEqual({ text: markup, cut: false, length: 28 });
  });

  it('shows hidden and direction marks by their code', () => {
    expect(shownCell('a\u0000b\u202Ec').text).toBe('a[U+0000]b[U+202E]c');
  });

  it('is cut after eighty characters and says how long it was', () => {
    const shown = shownCell('x'.repeat(10_000));
    expect(shown).toEqual({ text: 'x'.repeat(80), cut: true, length: 10_000 });
  });
});

describe('open questions', () => {
  const finding = (more: Partial<Finding>): Finding => ({
    kind: 'question',
    file: 'a.csv',
    row: { source: 'new/0/', line: 2, part: 0 },
    line: 2,
    column: 'r_ohm',
    value: '5',
    code: 'far_off',
    message: '',
    remedy: '',
    client: 'OM-0001',
    visitDate: '2025-03-04',
    ...more,
  });
  const reading: ReadingQuestion = {
    kind: 'same-number',
    key: 'k',
    client: 'OM-0001',
    visitDate: '2025-03-04',
    rows: [],
    differs: [],
  };
  const ids: PersonQuestion = {
    kind: 'similar-ids',
    ids: [
      { id: 'OM-1', visits: 3 },
      { id: 'om 1', visits: 1 },
    ],
    why: 'spelling',
  };
  const plan = (findings: readonly Finding[]) => ({ findings, people: [ids], readings: [reading] });
  const kinds = (findings: readonly Finding[], answers: readonly Answer[] = []) =>
    openQuestions(plan(findings), { ...DEFAULT_SETTINGS, answers: [...answers] }).map(({ question }) => question.kind);

  it('are asked once each, rows before people, and not again after an answer', () => {
    const findings = [finding({}), finding({ line: 9 }), finding({ kind: 'warning', value: '7' })];
    expect(kinds(findings)).toEqual(['far-off', 'same-number', 'similar-ids']);
    expect(kinds(findings, [farOff('keep')])).toEqual(['same-number', 'similar-ids']);
    expect(kinds(findings, [{ kind: 'different-clients', ids: ['om 1', 'OM-1'] }])).toEqual(['far-off', 'same-number']);
    const first: Answer = {
      kind: 'reading',
      client: 'OM-0001',
      visitDate: '2025-03-04',
      key: 'k',
      decision: 'first',
    };
    expect(kinds([], [first])).toEqual(['similar-ids']);
  });

  it('leave out rows that no answer could name, and readings that stand side by side anyway', () => {
    const unnamed = [finding({ client: null }), finding({ visitDate: 'soon' }), finding({ code: 'same_number' })];
    expect(kinds(unnamed)).toEqual(['same-number', 'similar-ids']);
  });
});

describe('an entered error', () => {
  it('takes decimal commas, passes over empty lines and names what is wrong', () => {
    const line = { measure: 'ffm' as const, sd: '0,6', df: '34' };
    expect(enteredValues([line, { measure: 'weight', sd: '', df: '' }])).toEqual({
      ok: true,
      values: [{ measure: 'ffm', betweenDaySd: 0.6, df: 34 }],
    });
    expect(enteredValues([{ ...line, sd: '0' }])).toMatchObject({ fault: 'wrongValue', measure: 'ffm' });
    expect(enteredValues([{ ...line, df: '3.5' }])).toMatchObject({ fault: 'wrongValue', measure: 'ffm' });
    expect(enteredValues([line, line])).toMatchObject({ fault: 'twice', measure: 'ffm' });
    expect(enteredValues([{ measure: 'ffm', sd: '', df: '' }])).toMatchObject({ fault: 'needsValue' });
  });

  it('keeps how thresholds are multiplied when another source is chosen', () => {
    const before = { kind: 'own' as const, alwaysT: true };
    expect(errorSourceOf('published', [], before)).toEqual({ kind: 'published', alwaysT: true });
  });
});
