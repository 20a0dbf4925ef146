import { expect, test } from 'vitest';
import type { ChangeRow } from '../../lib/cohort/types/change-row';
import type { IsoDate } from '../../lib/core/iso-date';
import { changePart } from '../../lib/workspace/document-rows';

const STOPPED: ChangeRow = {
  clientKey: 1,
  client: 'C-1',
  program: 'Walking',
  measure: 'ffm',
  purpose: 'baseline-latest',
  reviewWeek: null,
  from: '2025-01-13' as IsoDate,
  to: '2025-12-15' as IsoDate,
  fromVisit: 1,
  toVisit: 3,
  kFrom: 1,
  kTo: 1,
  valueFrom: 44,
  valueTo: 44.1,
  change: 0.1,
  lsc: 1.7,
  tier: 1,
  errorGroup: null,
  comparable: 'comparable',
  admitted: true,
  result: null,
  guard: 'stop',
  reasons: ['pregnancy', 'lying_equation_standing'],
  noted: [],
  terms: null,
};

test('a file says that no estimate is made, and names no pregnancy', () => {
  const row = changePart(STOPPED);
  expect(row).toMatchObject({ guard: 'stop', result: null, reasons: ['no_estimate', 'lying_equation_standing'] });
  expect(JSON.stringify(row)).not.toMatch(/pregnan/i);
});
