import { describe, expect, it } from 'vitest';
import { withAnswer, withoutAnswer } from '../../app/(workspace)/import/answers';
import { openQuestions } from '../../app/(workspace)/import/open-questions';
import { missingConditions } from '../../app/(workspace)/import/missing-conditions';
import { shownCell } from '../../app/(workspace)/import/shown-cell';
import { DEFAULT_SETTINGS, type Answer } from '../../lib/cohort/settings';
import type { Finding, PlannedFile } from '../../lib/import/plan';

const farOff = (decision: 'keep' | 'refuse', value = '5'): Answer => ({
  kind: 'far-off',
  client: 'OM-0001',
  visitDate: '2025-03-04',
  column: 'r_ohm',
  value,
  decision,
});

const file = (missing: readonly string[]): PlannedFile => ({
  name: 'a.csv',
  sha256: '',
  bytes: 1,
  rows: 1,
  encoding: 'utf-8',
  delimiter: ',',
  columns: [],
  unknownColumns: [],
  missingConditions: missing,
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
});

describe('conditions that no file records', () => {
  it('are asked for only where a written procedure can stand for them and every file leaves them out', () => {
    const found = missingConditions([file(['fasted_h', 'rested', 'device_id']), file(['fasted_h'])]);
    expect(found.map(({ rule, column }) => [rule.id, column])).toEqual([['fasting', 'fasted_h']]);
  });

  it('are none without a file', () => {
    expect(missingConditions([])).toEqual([]);
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

  it('are asked once each and not again after an answer', () => {
    const findings = [
      finding({}),
      finding({ line: 9 }),
      finding({ value: '6' }),
      finding({ kind: 'warning', value: '7' }),
    ];
    expect(openQuestions(findings, DEFAULT_SETTINGS).map(({ value, line }) => [value, line])).toEqual([
      ['5', 2],
      ['6', 2],
    ]);
    expect(openQuestions(findings, withAnswer(DEFAULT_SETTINGS, farOff('keep'))).map(({ value }) => value)).toEqual([
      '6',
    ]);
  });

  it('leave out rows that no answer could name', () => {
    expect(openQuestions([finding({ client: null }), finding({ visitDate: 'soon' })], DEFAULT_SETTINGS)).toEqual([]);
  });
});
