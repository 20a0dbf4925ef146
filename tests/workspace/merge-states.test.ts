import { describe, expect, test } from 'vitest';
import { DEFAULT_SETTINGS, settingsSchema, type Settings } from '../../lib/cohort/settings';
import { clinicStateSchema, type ClinicState, type ImportRecord } from '../../lib/workspace/clinic-state';
import { conflictWords } from '../../lib/workspace/conflict-words';
import { mergeStates } from '../../lib/workspace/merge-states';
import { stateDifference } from '../../lib/workspace/state-difference';

const signed = { initials: 'AB', at: '2026-01-05T08:00:00.000Z' };
const row = { source: 'i1/0/', line: 2, part: 0 };
const hash = (digit: string): string => digit.repeat(64);

const imported = (id: string, digit: string, more: Partial<ImportRecord['files'][number]> = {}): ImportRecord => ({
  id,
  on: '2026-01-05',
  initials: 'AB',
  files: [{ name: `${id}.csv`, sha256: hash(digit), bytes: 10, tables: [], ...more }],
});

const state = (more: Partial<ClinicState> = {}): ClinicState =>
  clinicStateSchema.parse({ settings: DEFAULT_SETTINGS, imports: [imported('i1', 'a')], ...more });

const settings = (more: Record<string, unknown>): Settings => settingsSchema.parse(more);

const ownEquation = (id: string, version: number) => ({
  id,
  name: id,
  quantity: 'tbw',
  unit: 'L',
  version,
  branches: [{ intercept: 1, terms: [{ coefficient: 0.5, regressor: 'weight' }] }],
  sexCoding: { M: 1, F: 0 },
  population: { description: 'adults' },
  posture: 'lying',
  electrodePath: 'hand-to-foot',
  frequencyKhz: 50,
  referenceMethod: 'dilution',
  fit: {},
  citation: { id: 'a-2020', authors: ['A B'], year: 2020, title: 'A study', journal: 'A journal' },
  verification: 'entered-by-clinic',
  verificationNote: '',
  cautions: [],
});

const note = (id: string, text: string) => ({ id, client: 'c', text, ...signed });

const merged = (base: ClinicState, mine: ClinicState, theirs: ClinicState): ClinicState => {
  const result = mergeStates(base, mine, theirs, {});
  expect(result.conflicts).toEqual([]);
  return result.state;
};

describe('what only one side changed', () => {
  test('is taken over, whichever side it was', () => {
    const base = state();
    const mine = state({ settings: settings({ level: 80 }), notes: [note('n1', 'mine')] });
    const theirs = state({
      retentionMonths: 24,
      notes: [note('n2', 'theirs')],
      imports: [imported('i1', 'a'), imported('i2', 'b')],
    });
    const both = merged(base, mine, theirs);
    expect([both.settings.level, both.retentionMonths]).toEqual([80, 24]);
    expect(both.notes.map(({ text }) => text)).toEqual(['mine', 'theirs']);
    expect(both.imports.map(({ id }) => id)).toEqual(['i1', 'i2']);
  });

  test('a removal stays a removal, and does not take what the other side added', () => {
    const base = state({ notes: [note('n1', 'old')], imports: [imported('i1', 'a'), imported('i2', 'b')] });
    const mine = state({ notes: [] });
    const theirs = state({ ...base, notes: [note('n1', 'old'), note('n3', 'new')] });
    const both = merged(base, mine, theirs);
    expect(both.notes.map(({ id }) => id)).toEqual(['n3']);
    expect(both.imports.map(({ id }) => id)).toEqual(['i1']);
  });

  test('methods go part by part: quantities, switches and each equation and reference of the clinic', () => {
    const before = { equations: { asm: 'asm-old' }, switchedOn: ['one'], references: { on: ['r'], off: [] } };
    const base = state({ settings: settings({ methods: before }) });
    const mine = state({
      settings: settings({
        methods: {
          ...before,
          equations: { asm: 'asm-old', ree: null },
          switchedOn: ['one', 'two'],
          ownEquations: [ownEquation('own-mine', 1)],
          references: { on: ['r'], off: ['s'] },
        },
      }),
    });
    const theirs = state({
      settings: settings({
        methods: {
          ...before,
          equations: { asm: null },
          switchedOn: ['three'],
          geometryCorrected: true,
          ownEquations: [ownEquation('own-theirs', 1), ownEquation('own-theirs', 2)],
          references: { on: [], off: [] },
          cutOffs: { on: ['c'], off: [] },
        },
        outsideEquation: 'exclude',
      }),
    });
    const both = merged(base, mine, theirs).settings;
    expect(both.outsideEquation).toBe('exclude');
    expect(both.methods.equations).toMatchObject({ asm: null, ree: null, ffm: 'ffm-kyle-2001' });
    expect(both.methods).toMatchObject({
      switchedOn: ['two', 'three'],
      geometryCorrected: true,
      references: { on: [], off: ['s'] },
      cutOffs: { on: ['c'], off: [] },
    });
    expect(both.methods.ownEquations.map(({ id, version }) => `${id} ${String(version)}`)).toEqual([
      'own-mine 1',
      'own-theirs 1',
      'own-theirs 2',
    ]);
  });

  test('programs go by name, enrolments by client, program and start, procedures are a set, answers go by what they are about', () => {
    const procedure = (site: string) => ({ site, from: null, to: null, conditions: ['fasting'], initials: 'AB' });
    const enrolment = (client: string) => ({ client, program: 'Walking', start: '2025-01-06' });
    const base = state({
      settings: settings({
        programs: [{ name: 'Walking' }],
        procedures: [procedure('North')],
        enrolments: [enrolment('a')],
      }),
    });
    const mine = state({
      settings: settings({
        programs: [{ name: 'Walking', plannedVisitWeeks: [0, 12] }],
        procedures: [procedure('North'), procedure('South')],
        answers: [{ kind: 'sex-for-equations', client: 'a', sex: 'F' }],
        enrolments: [{ ...enrolment('a'), end: '2025-06-02', endReason: 'moved' }],
      }),
    });
    const theirs = state({
      settings: settings({
        programs: [{ name: 'Walking' }, { name: 'Strength' }],
        enrolments: [enrolment('a'), enrolment('b')],
        procedures: [],
        answers: [{ kind: 'sex-for-equations', client: 'b', sex: 'M' }],
      }),
    });
    const both = merged(base, mine, theirs).settings;
    expect(both.programs.map(({ name, plannedVisitWeeks }) => [name, plannedVisitWeeks])).toEqual([
      ['Walking', [0, 12]],
      ['Strength', []],
    ]);
    expect(both.procedures.map(({ site }) => site)).toEqual(['South']);
    expect(both.enrolments.map(({ client, end }) => [client, end])).toEqual([
      ['a', '2025-06-02'],
      ['b', null],
    ]);
    expect(both.answers.map((answer) => 'client' in answer && answer.client)).toEqual(['a', 'b']);
  });
});

describe('imports', () => {
  test('the same file brought in on both sides is there once, and what was said of its rows follows it', () => {
    const base = state({ imports: [] });
    const mine = state({ imports: [imported('mine', 'c')] });
    const theirs = state({
      imports: [imported('theirs', 'c')],
      setAside: [{ id: 's', row: { ...row, source: 'theirs/0/' }, reason: 'twice', ...signed }],
    });
    const both = merged(base, mine, theirs);
    expect(both.imports.map(({ id }) => id)).toEqual(['mine']);
    expect(both.setAside.map((item) => item.row.source)).toEqual(['mine/0/']);
  });

  test('a file that one side wrote anew without a person goes before the untouched copy', () => {
    const anew = imported('i1', 'd', { rewrittenAt: signed.at });
    expect(merged(state(), state(), state({ imports: [anew] })).imports).toEqual([anew]);
    expect(merged(state(), state({ imports: [anew] }), state()).imports).toEqual([anew]);
    const other = imported('i1', 'e', { rewrittenAt: signed.at });
    expect(merged(state(), state({ imports: [anew] }), state({ imports: [other] })).imports).toEqual([anew]);
    expect(merged(state({ imports: [] }), state(), state({ imports: [anew] })).imports).toEqual([anew]);
  });
});

describe('what both sides changed', () => {
  const correction = (id: string, to: string) => ({
    id,
    row,
    column: 'weight_kg',
    from: '8',
    to,
    reason: 'slip',
    ...signed,
  });
  const base = state({ notes: [note('n1', 'old')] });
  const mine = state({
    settings: settings({ level: 80 }),
    notes: [note('n1', 'mine')],
    corrections: [correction('x', '80')],
  });
  const theirs = state({ settings: settings({ level: 90 }), notes: [], corrections: [correction('y', '81')] });
  const paths = ['settings.level', 'corrections.i1/0/, 2, 0, weight_kg', 'notes.n1'];

  test('is a conflict with its place and three values, and mine until it is decided', () => {
    const result = mergeStates(base, mine, theirs, {});
    expect(result.conflicts.map(({ path }) => path)).toEqual(paths);
    expect(result.conflicts.map((item) => [item.base, item.mine, item.theirs].map(conflictWords))).toEqual([
      ['95', '80', '90'],
      ['not there', expect.stringContaining('to: 80'), expect.stringContaining('to: 81')],
      [expect.stringContaining('text: old'), expect.stringContaining('text: mine'), 'not there'],
    ]);
    expect([result.state.settings.level, result.state.notes.length]).toEqual([80, 1]);
  });

  test('follows the choice, place by place', () => {
    const result = mergeStates(base, mine, theirs, { [String(paths[0])]: 'theirs', [String(paths[2])]: 'theirs' });
    expect(result.state.settings.level).toBe(90);
    expect(result.state.corrections.map(({ to }) => to)).toEqual(['80']);
    expect(result.state.notes).toEqual([]);
  });

  test('in the same way is no conflict', () => {
    const same = state({ settings: settings({ level: 80 }), corrections: [correction('z', '80')] });
    expect(merged(state(), { ...same, corrections: [correction('x', '80')] }, same).corrections).toHaveLength(1);
  });
});

test('a difference counts what was added, changed and taken out, by kind', () => {
  const from = state({ notes: [note('n1', 'old'), note('n2', 'stays')] });
  const to = state({
    settings: settings({ level: 80 }),
    notes: [note('n1', 'new'), note('n2', 'stays'), note('n3', 'more')],
    imports: [],
  });
  expect(stateDifference(from, to)).toEqual({ settings: 1, imports: 1, notes: 2 });
  expect(stateDifference(from, from)).toEqual({});
});

describe('device logs of two copies', () => {
  const entry = (on: string, r: number, initials = 'AB') => ({
    device: 'Unit 1',
    on,
    kind: 'phantom' as const,
    r,
    xc: null,
    initials,
  });
  const devices = (more: Record<string, unknown>): ClinicState => state({ settings: settings({ devices: more }) });
  const first = entry('2025-01-06', 500);

  test('come together reading by reading, in order of time; what one side took out is gone', () => {
    const gone = entry('2025-01-13', 510);
    const base = devices({ log: [first, gone] });
    const mine = devices({ log: [first, entry('2025-01-27', 501)] });
    const theirs = devices({ log: [first, gone, entry('2025-01-20', 502, 'CD')] });
    const { log } = merged(base, mine, theirs).settings.devices;
    expect(log.map(({ on, r }) => [on, r])).toEqual([
      ['2025-01-06', 500],
      ['2025-01-20', 502],
      ['2025-01-27', 501],
    ]);
  });

  test('keep two readings that say the same, and double none that both sides have', () => {
    const base = devices({ log: [first] });
    const mine = devices({ log: [first, first] });
    expect(merged(base, mine, base).settings.devices.log).toEqual([first, first]);
    expect(merged(base, mine, mine).settings.devices.log).toEqual([first, first]);
  });

  test('a step that both sides entered for the same day is a conflict, another day or device is not', () => {
    const step = (on: string, reason: string) => ({ device: 'Unit 1', on, reason, initials: 'AB' });
    const base = devices({});
    const mine = devices({ steps: [step('2025-03-03', 'service'), step('2025-04-07', 'repair')] });
    const theirs = devices({ steps: [step('2025-03-03', 'new electrodes')] });
    const { state: both, conflicts } = mergeStates(base, mine, theirs, {});
    expect(conflicts.map(({ path }) => path)).toEqual(['settings.devices.steps.Unit 1, 2025-03-03']);
    expect(both.settings.devices.steps.map(({ on, reason }) => [on, reason])).toEqual([
      ['2025-03-03', 'service'],
      ['2025-04-07', 'repair'],
    ]);
  });

  test('conversions of other devices and choices of the error study stand beside each other', () => {
    const between = (second: string) => ({
      first: 'Unit 1',
      second,
      on: '2025-04-01',
      initials: 'AB',
      people: 30,
      r: 1,
      xc: 0,
      weight: 0,
    });
    const base = state();
    const mine = state({
      settings: settings({ devices: { conversions: [between('Unit 2')] }, errorStudy: { errorFrom: 'device' } }),
    });
    const theirs = state({
      settings: settings({ devices: { conversions: [between('Unit 3')] }, errorStudy: { includeRoutine: true } }),
    });
    const both = merged(base, mine, theirs).settings;
    expect(both.devices.conversions.map(({ second }) => second)).toEqual(['Unit 2', 'Unit 3']);
    expect(both.errorStudy).toMatchObject({ errorFrom: 'device', includeRoutine: true });
  });
});
