import { describe, expect, it } from 'vitest';
import { compareAnswers } from './compare-answers';

describe('the comparison of two answers', () => {
  it('sees a number that is off by more than a billionth', () => {
    expect(compareAnswers([{ lsc: 2 }], [{ lsc: 2 * (1 + 1.1e-9) }]).differences).toHaveLength(1);
    expect(compareAnswers([{ lsc: 2 }], [{ lsc: 2 * (1 + 0.9e-9) }]).differences).toEqual([]);
  });

  it('measures a value near zero by the spread of its column', () => {
    const a = [{ change: 3 }, { change: -3 }, { change: 0 }];
    expect(compareAnswers(a, [{ change: 3 }, { change: -3 }, { change: 2e-9 }]).differences).toEqual([]);
    expect(compareAnswers(a, [{ change: 3 }, { change: -3 }, { change: 4e-9 }]).differences).toHaveLength(1);
  });

  it('keeps the columns of different values apart', () => {
    const a = [
      { measure: 'r', lsc: 400 },
      { measure: 'smi', lsc: 0 },
    ];
    const b = [
      { measure: 'r', lsc: 400 },
      { measure: 'smi', lsc: 1e-12 },
    ];
    expect(compareAnswers(a, b).differences).toHaveLength(1);
  });

  it('sees another word, a missing key, a missing row and what is no finite number', () => {
    expect(compareAnswers({ result: 'up' }, { result: 'down' }).differences).toHaveLength(1);
    expect(compareAnswers({ result: null }, {}).differences).toHaveLength(1);
    expect(compareAnswers([1, 2], [1]).differences).toHaveLength(2);
    expect(compareAnswers([1], [Number.NaN]).differences).toHaveLength(1);
    expect(compareAnswers([1], [Number.POSITIVE_INFINITY]).differences).toHaveLength(1);
  });
});
