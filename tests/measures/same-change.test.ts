import { describe, expect, test } from 'vitest';
import { sameChangeAs } from '../../lib/measures/same-change';

const SHOWN = ['weight', 'bmi', 'r', 'xc', 'phase_angle', 'r_h', 'ffm', 'fm', 'ffmi', 'smm', 'ffm_exported'] as const;

describe('values that stand for one change', () => {
  test('count with the first of their family, the electrical ones apart from what is computed with weight', () => {
    const headOf = (chosen: 'ffm' | 'smm'): unknown =>
      Object.fromEntries(SHOWN.map((measure) => [measure, sameChangeAs(measure, SHOWN, chosen)]));
    expect(headOf('ffm')).toEqual({ bmi: 'weight', r_h: 'r', ffmi: 'ffm', smm: 'ffm' });
    expect(headOf('smm')).toMatchObject({ ffm: 'smm', ffmi: 'smm', smm: undefined });
  });

  test('stand alone where no other of the family is shown, and as the device exported them', () => {
    expect(sameChangeAs('smm', ['smm', 'weight'], 'ffm')).toBeUndefined();
    expect(sameChangeAs('r_h', ['r_h', 'phase_angle'], 'ffm')).toBeUndefined();
    expect(sameChangeAs('smm_exported', ['ffm_exported', 'smm_exported'], 'ffm_exported')).toBeUndefined();
  });
});
