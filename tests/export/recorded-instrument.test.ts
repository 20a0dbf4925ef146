import { expect, test } from 'vitest';
import { recordedInstrument } from '../../lib/export/methods/recorded-instrument';

test('the instrument’s facts are counted column by column, what a visit does not say is left out', () => {
  expect(
    recordedInstrument([
      { device: 'A', electrodePath: 'hand-to-foot', posture: 'lying', frequencyKhz: 50, visits: 7 },
      { device: 'B', electrodePath: 'hand-to-foot', posture: null, frequencyKhz: 50, visits: 9 },
      { device: 'A', electrodePath: null, posture: 'standing', frequencyKhz: null, visits: 4 },
    ]),
  ).toEqual({
    visits: 20,
    devices: [
      { value: 'A', visits: 11 },
      { value: 'B', visits: 9 },
    ],
    electrodePaths: [{ value: 'hand-to-foot', visits: 16 }],
    postures: [
      { value: 'lying', visits: 7 },
      { value: 'standing', visits: 4 },
    ],
    frequenciesKhz: [{ value: 50, visits: 16 }],
  });
});

test('nothing is said where no visit holds a resistance', () => {
  expect(recordedInstrument([])).toBeNull();
});
