import { expect, test } from 'vitest';
import { recordedCautions } from '../../lib/workspace/recorded-cautions';

const row = (visit_date: string, cells: Readonly<Record<string, string>>, status = 'accepted') => ({
  status,
  cells: { visit_date, ...cells },
});

test('cautions stand once each, with their days in order; a denied one and a row that is not used say nothing', () => {
  expect(
    recordedCautions([
      row('2025-06-02', { oedema: 'y', pregnant: 'n', dialysis: 'none', hours_since_dialysis: '4' }),
      row('2025-03-03', { oedema: 'y', implanted_device: 'y' }),
      row('2025-03-03', { oedema: 'y' }),
      row('2025-04-07', { large_metal_implant: 'y' }, 'set-aside'),
      row('2025-09-01', { dialysis: 'haemo', weeks_after_birth: '16' }),
    ]),
  ).toEqual([
    { column: 'oedema', value: 'y', dates: ['2025-03-03', '2025-06-02'] },
    { column: 'implanted_device', value: 'y', dates: ['2025-03-03'] },
    { column: 'weeks_after_birth', value: '16', dates: ['2025-09-01'] },
    { column: 'dialysis', value: 'haemo', dates: ['2025-09-01'] },
  ]);
});
