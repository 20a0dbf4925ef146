import { describe, expect, test } from 'vitest';
import { settingsSchema, type Settings } from '../../lib/cohort/settings';
import { isCutOffInForceByDefault } from '../../lib/measures/cut-offs/cut-off';
import { PUBLISHED_CUT_OFFS } from '../../lib/measures/cut-offs/published-cut-offs';
import { offeredCutOffs, offeredReferences, switched } from '../../lib/workspace/offered-methods';

const settingsWith = (cutOffs: { on?: string[]; off?: string[] }, references = {}): Settings =>
  settingsSchema.parse({ methods: { cutOffs, references } });

const ids = (all: readonly { readonly id: string }[]): readonly string[] => all.map(({ id }) => id);

const usual = PUBLISHED_CUT_OFFS.filter(isCutOffInForceByDefault);
const unusual = PUBLISHED_CUT_OFFS.filter((cutOff) => !isCutOffInForceByDefault(cutOff));

describe('what a clinic offers', () => {
  test('is at first what was read in a source for everybody, nothing from memory', () => {
    const offered = offeredCutOffs(settingsWith({}));
    expect(ids(offered)).toEqual(ids(usual));
    expect(offered.filter(({ verification }) => verification === 'from-memory')).toEqual([]);
    expect(usual.length).toBeGreaterThan(5);
    expect(unusual.length).toBeGreaterThan(5);
  });

  test('changes by one entry with each switch, and back', () => {
    const [first] = usual;
    const [other] = unusual;
    if (first === undefined || other === undefined) throw new Error('no cut-offs');
    const none = { on: [], off: [] };
    const without = switched(none, first.id, true, false);
    const both = switched(without, other.id, false, true);
    expect(both).toEqual({ on: [other.id], off: [first.id] });
    const offered = ids(offeredCutOffs(settingsWith({ on: [...both.on], off: [...both.off] })));
    expect(offered).toContain(other.id);
    expect(offered).not.toContain(first.id);
    expect(switched(switched(both, other.id, false, false), first.id, true, true)).toEqual(none);
  });

  test('holds no reference population from memory before it is switched on', () => {
    const atFirst = offeredReferences(settingsWith({}));
    expect(atFirst.filter(({ verification }) => verification === 'from-memory')).toEqual([]);
    expect(ids(atFirst)).toContain('phase-angle-mattiello-2020');
    const after = ids(offeredReferences(settingsWith({}, { on: ['vector-piccoli-1995'] })));
    expect(after).toEqual(expect.arrayContaining([...ids(atFirst), 'vector-piccoli-1995']));
    expect(after).toHaveLength(atFirst.length + 1);
  });
});
