import { describe, expect, test } from 'vitest';
import type { TalkToRow } from '../../lib/cohort/types/contact-lists';
import type { IsoDate } from '../../lib/core/iso-date';
import { callKind, callsIn, callValue, callYield, talkToState } from '../../lib/workspace/contact-calls';
import type { Mark } from '../../lib/workspace/clinic-state';

/** As much of a row as a call is about. */
const row = (client: string, to: string, rules: readonly string[] = ['lean-change']): TalkToRow =>
  ({ client, change: { to }, reasons: rules.map((rule) => ({ rule })) }) as unknown as TalkToRow;

const mark = (client: string, visit: string, value: string): Mark => ({
  id: `${client} ${visit}`,
  client,
  kind: callKind(visit as IsoDate),
  value,
  initials: 'AB',
  at: '2026-01-02T10:00:00.000Z',
});

describe('what came of calls', () => {
  test('is a mark that keeps the visit it was about and the rules that had listed the row', () => {
    const listed = row('a', '2025-12-12', ['lean-change', 'lean-slope']);
    const kept = mark('a', '2025-12-12', callValue('explained', listed));
    expect(callsIn([kept])).toEqual([
      {
        client: 'a',
        visit: '2025-12-12',
        outcome: 'explained',
        rules: ['lean-change', 'lean-slope'],
        initials: 'AB',
        at: '2026-01-02T10:00:00.000Z',
      },
    ]);
  });

  test('leaves marks of other kinds and what cannot be read alone', () => {
    const other: Mark = { ...mark('a', '2025-12-12', 'confirmed'), kind: 'something else' };
    expect(callsIn([other, mark('a', '2025-13-40', 'confirmed'), mark('a', '2025-12-12', 'perhaps')])).toEqual([]);
  });

  test('lets a row rest until there is a later visit; who was not reached stays', () => {
    const rows = [row('a', '2025-12-12'), row('b', '2025-12-12'), row('c', '2025-12-12'), row('d', '2025-12-12')];
    const calls = callsIn([
      mark('a', '2025-12-12', 'confirmed lean-change'),
      mark('b', '2025-11-03', 'confirmed lean-change'),
      mark('c', '2025-12-12', 'not-reached lean-change'),
    ]);
    const state = talkToState(rows, calls);
    expect(state.open.map(({ client }) => client)).toEqual(['b', 'c', 'd']);
    expect(state.spoken.map(({ row: { client } }) => client)).toEqual(['a']);
    expect([...state.tried.keys()]).toEqual(['c']);
  });

  test('are counted by rule, and another setting is offered from five people on of whom more than half were not useful', () => {
    const calls = (outcomes: readonly string[]) =>
      callsIn(outcomes.map((outcome, index) => mark(`client ${String(index)}`, '2025-12-12', `${outcome} lean-slope`)));
    expect(callYield([])).toEqual([]);
    expect(callYield(calls(['not-useful', 'not-useful', 'explained', 'confirmed', 'not-reached']))).toEqual([
      {
        rule: 'lean-slope',
        called: 5,
        outcomes: { confirmed: 1, explained: 1, 'not-reached': 1, 'not-useful': 2 },
        mostlyNotUseful: false,
      },
    ]);
    const many = ['not-useful', 'not-useful', 'not-useful', 'explained'];
    expect(callYield(calls([...many, 'not-reached']))[0]?.mostlyNotUseful).toBe(false);
    expect(callYield(calls([...many, 'confirmed']))[0]?.mostlyNotUseful).toBe(true);
  });
});
