import { describe, expect, it } from 'vitest';
import { correctableColumns } from '../../app/(workspace)/client/correctable-columns';
import { rowChanges } from '../../app/(workspace)/client/row-changes';
import { erasureCounts } from '../../app/(workspace)/settings/found-person';
import { monthsFrom } from '../../app/(workspace)/settings/retention-panel';
import { passphraseProblem } from '../../app/_ui/passphrase-pair';
import { withFilter } from '../../app/_ui/with-filter';
import { createFormatters } from '../../lib/core/formatters';
import { en } from '../../lib/core/messages/en';

const messages = en(createFormatters());
const rowAt = (line: number, part = 0) => ({ source: 'i/0/', line, part });
const signed = { id: 'x', initials: 'AB', at: '2026-01-02T10:00:00Z' };
const correction = (line: number) => ({
  ...signed,
  row: rowAt(line),
  column: 'weight_kg',
  from: '1',
  to: '2',
  reason: 'r',
});
const aside = (line: number) => ({ ...signed, row: rowAt(line), reason: 'r' });

describe('erasing a person', () => {
  it('counts the rows, files, notes, marks, corrections and set-asides of that person alone', () => {
    const person = {
      client: 'A-1',
      rows: [
        { row: rowAt(2), file: 'a.csv' },
        { row: rowAt(5, 1), file: 'b.csv' },
      ],
    };
    const note = (client: string) => ({ ...signed, client, text: 't' });
    const counts = erasureCounts(person, {
      notes: [note('A-1'), note('A-2')],
      marks: [{ ...signed, client: 'A-1', kind: 'k', value: 'v' }],
      corrections: [correction(2), correction(3)],
      setAside: [aside(2), aside(5)],
    });
    expect(counts).toEqual({ rows: 2, files: 2, notes: 2, corrections: 2 });
  });
});

describe('what the clinic changed about a row', () => {
  it('is found by file, line and part', () => {
    expect(rowChanges(rowAt(2), [correction(2), correction(3)], [aside(3)])).toEqual({
      corrections: [correction(2)],
      setAside: undefined,
    });
    expect(rowChanges(rowAt(2, 1), [correction(2)], [aside(2)])).toEqual({ corrections: [], setAside: undefined });
  });
});

describe('the columns that can be corrected', () => {
  const columns = correctableColumns({ weight_kg: '71.2' }, messages.client.columnWord);

  it('begin with what is corrected most and say what stands there', () => {
    expect(columns[0]).toEqual({ value: 'weight_kg', label: 'weight: 71.2' });
  });

  it('never move a reading to another person', () => {
    expect(columns.map(({ value }) => value)).not.toContain('client_id');
    expect(columns.length).toBeGreaterThan(40);
  });
});

describe('months of keeping', () => {
  it('are a whole number, or none', () => {
    expect(monthsFrom('24')).toBe(24);
    expect(monthsFrom(' ')).toBeNull();
    for (const text of ['0', '-3', '1.5', 'two', '601']) expect(monthsFrom(text)).toBeUndefined();
  });
});

describe('a new passphrase', () => {
  it('is long enough and typed twice alike', () => {
    expect(passphraseProblem({ first: 'short', second: 'short' })).toBe('short');
    expect(passphraseProblem({ first: 'blue heron lamp', second: 'blue heron lamb' })).toBe('differ');
    expect(passphraseProblem({ first: 'blue heron lamp', second: 'blue heron lamp' })).toBeUndefined();
  });
});

describe('a link inside the app', () => {
  it('carries the filter before its anchor', () => {
    const filter = new URLSearchParams('program=Walking&c=3');
    expect(withFilter('/settings/#keeping', filter)).toBe('/settings/?program=Walking#keeping');
    expect(withFilter('/client/?c=4', new URLSearchParams('value=weight'))).toBe('/client/?c=4&value=weight');
    expect(withFilter('/settings/#log', new URLSearchParams())).toBe('/settings/#log');
  });
});

describe('sizes', () => {
  it('are written in decimal steps', () => {
    expect(messages.settings.size({ bytes: 74_000 })).toBe('74\u00A0kB');
    expect(messages.settings.size({ bytes: 1_234_567 })).toBe('1.2\u00A0MB');
    expect(messages.settings.size({ bytes: 11e9 })).toBe('11\u00A0GB');
  });
});
