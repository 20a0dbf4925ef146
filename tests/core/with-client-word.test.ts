import { describe, expect, it } from 'vitest';
import { createFormatters } from '../../lib/core/formatters';
import { en } from '../../lib/core/messages/en';
import { withClientWord } from '../../lib/core/messages/with-client-word';

const messages = en(createFormatters());

describe('the word for the people who are measured', () => {
  it('stays “client” where the clinic says so', () => {
    expect(withClientWord(messages, 'client')).toBe(messages);
  });

  it('changes in names of screens, in sentences and in the plural', () => {
    const reworded = withClientWord(messages, 'patient');
    expect(reworded.shell.screens.clients).toBe('Patients');
    expect(reworded.client.none).toBe('There is no such patient in these data');
    expect(reworded.clients.headline({ n: 3, visits: 9, from: 'a', to: 'b' })).toContain('3 patients');
    expect(reworded.clients.headline({ n: 1, visits: 9, from: 'a', to: 'b' })).not.toMatch(/client/i);
  });

  it('leaves what a clinic or a file says untouched', () => {
    const reworded = withClientWord(messages, 'participant');
    expect(reworded.thisWeek.fileLine({ name: 'client export.csv', rows: 2, on: '4 March 2025' })).toContain(
      'client export.csv',
    );
    expect(reworded.client.missingFor({ needs: 'a', values: 'Client coaching' })).toContain('Client coaching');
  });

  it('keeps every key and every kind of entry', () => {
    const kinds = (entry: unknown): unknown =>
      typeof entry === 'object' && entry !== null
        ? Object.fromEntries(Object.entries(entry).map(([name, item]) => [name, kinds(item)]))
        : typeof entry;
    expect(kinds(withClientWord(messages, 'patient'))).toEqual(kinds(messages));
  });
});
