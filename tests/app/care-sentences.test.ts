import { expect, test } from 'vitest';
import { careSentences } from '../../app/(workspace)/contact/care-sentences';
import type { ChangeRow } from '../../lib/cohort/types/change-row';
import { createFormatters } from '../../lib/core/formatters';
import { en } from '../../lib/core/messages/en';

const formatters = createFormatters();
const messages = en(formatters);

const said = (
  change: Pick<ChangeRow, 'reasons' | 'errorGroup' | 'lsc'>,
  errorFrom: 'everyone' | 'device',
  withRules = true,
): readonly string[] => careSentences(change, { messages, formatters, errorFrom }, withRules);

test('a row says what a wider setting let in and which cautions hold, once; what the row says anyway it leaves out', () => {
  const change = {
    reasons: ['posture', 'unknown_exercise', 'converted_device', 'fits_less_water', 'mostly_weight_term'],
    errorGroup: null,
    lsc: 1.2,
  } as const;
  expect(said(change, 'everyone')).toEqual([
    'To be read with care: another posture, exercise before is not known at one visit and converted between devices by the cross-check.',
  ]);
  expect(said(change, 'everyone', false)).toEqual([
    'To be read with care: converted between devices by the cross-check.',
  ]);
  expect(said({ ...change, reasons: [] }, 'everyone')).toEqual([]);
});

test('where groups have errors of their own a row says whose error judged it', () => {
  const change = { reasons: [], errorGroup: 'Unit H', lsc: 1.2 } as const;
  expect(said(change, 'device')).toEqual(['Judged by the error of Unit H alone.']);
  expect(said({ ...change, errorGroup: null }, 'device').join()).toContain('from people unlike these');
  expect(said({ ...change, lsc: null }, 'device')).toEqual([]);
});
