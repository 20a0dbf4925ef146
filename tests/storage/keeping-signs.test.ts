import { describe, expect, test } from 'vitest';
import { keepingSigns, type SeenAtStart } from '../../lib/storage/keeping-signs';
import { fits } from '../../lib/storage/room';

const nothing: SeenAtStart = {
  smallMarker: null,
  databaseMarker: null,
  clinics: 0,
  olderFiles: 0,
  persisted: false,
  quotaBytes: 10 * 1024 ** 3,
};

describe('signs of how well the browser keeps', () => {
  test('an empty storage is a first visit, or a browser that clears all: the signs cannot tell', () => {
    expect(keepingSigns(nothing)).toEqual({
      storage: 'first-visit-or-cleared',
      lastVisit: null,
      survivors: 0,
      promised: false,
      littleRoom: false,
    });
  });

  test('a mark without clinics says that they were cleared, and since when', () => {
    const signs = keepingSigns({ ...nothing, smallMarker: '2026-01-02' });
    expect([signs.storage, signs.lastVisit]).toEqual(['data-cleared', '2026-01-02']);
    expect(keepingSigns({ ...nothing, olderFiles: 2 })).toMatchObject({ storage: 'data-cleared', survivors: 2 });
  });

  test('clinics without the small mark say that a part was cleared', () => {
    const seen = { ...nothing, clinics: 1, databaseMarker: '2026-01-02' };
    expect(keepingSigns(seen).storage).toBe('partly-cleared');
    const both = keepingSigns({ ...seen, smallMarker: '2026-01-03', persisted: true });
    expect(both).toMatchObject({ storage: 'kept', lastVisit: '2026-01-03', promised: true });
  });

  test('little room is named', () => {
    expect(keepingSigns({ ...nothing, quotaBytes: 300_000_000 }).littleRoom).toBe(true);
    expect(keepingSigns({ ...nothing, quotaBytes: null }).littleRoom).toBe(false);
  });
});

test('what fits leaves room for the books of the browser, and is unknown where the browser does not say', () => {
  const room = { usedBytes: 50_000_000, quotaBytes: 100_000_000, persisted: false };
  expect(fits(room, 40_000_000)).toBe('yes');
  expect(fits(room, 50_000_000)).toBe('no');
  expect(fits({ ...room, quotaBytes: null }, 1)).toBe('unknown');
});
