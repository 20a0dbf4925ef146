import { describe, expect, test } from 'vitest';
import { clinicBodySchema } from '../../lib/workspace/clinic-state';
import { fromVersionOne } from '../../lib/workspace/from-version-one';
import { startingSettings } from '../../lib/workspace/starting-settings';

const AT = '2026-01-05T10:00:00Z';
const sha256 = 'a'.repeat(64);

const old = {
  version: 1,
  revision: 9,
  open: 'own',
  demo: { withoutConditions: true },
  own: {
    settings: { ...startingSettings, clinic: { name: 'Riverside', invented: false } },
    files: [{ name: 'visits.csv', sha256, bytes: 120, rows: 4, importedOn: '2025-11-01' }],
  },
};

describe('the manifest of version 1', () => {
  test('becomes the own clinic, its files to be mapped as suggested when they are opened', () => {
    const { clinics, lastOpen } = fromVersionOne(old, AT);
    expect(lastOpen).toBe('own');
    expect(clinics.map(({ id, name, revision }) => [id, name, revision])).toEqual([['own', 'Riverside', 1]]);
    const body = clinicBodySchema.parse(clinics[0]?.body);
    expect(body.state.imports).toEqual([
      {
        id: 'first-1',
        on: '2025-11-01',
        initials: '',
        files: [{ name: 'visits.csv', sha256, bytes: 120, tables: [] }],
      },
    ]);
    expect(body.tombstoneKey.length).toBeGreaterThan(40);
  });

  test('keeps a demo whose settings were changed', () => {
    const { clinics, lastOpen } = fromVersionOne(
      { version: 1, revision: 2, open: 'demo', demo: { settings: startingSettings, withoutConditions: true } },
      AT,
    );
    expect(lastOpen).toBe('demo');
    expect(clinicBodySchema.parse(clinics[0]?.body)).toMatchObject({ kind: 'demo', withoutConditions: true });
  });

  test('is not guessed at where it cannot be read', () => {
    expect(() => fromVersionOne({ version: 1 }, AT)).toThrow();
  });
});
