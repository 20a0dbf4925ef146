import { describe, expect, test } from 'vitest';
import { draftOf, EMPTY_DRAFT, type ProgramDraft } from '../../app/(workspace)/settings/program-draft';
import { readProgram } from '../../app/(workspace)/settings/read-program';
import { settingsSchema } from '../../lib/cohort/settings';
import { enteredEnrolment, withEnrolment, withoutEnrolment } from '../../lib/workspace/kept-enrolments';
import { committedFile } from '../sample-data/committed-file';

const read = (more: Partial<ProgramDraft>) => readProgram({ ...EMPTY_DRAFT, name: 'Walking', ...more });

describe('a program as it is typed', () => {
  test('reads back what its draft was made of, for every program of the demo clinic', () => {
    const { programs } = settingsSchema.parse(JSON.parse(committedFile('settings.json')));
    for (const program of programs) expect(readProgram(draftOf(program))).toEqual({ program, unreadable: [] });
    expect(programs.length).toBeGreaterThan(3);
  });

  test('takes weeks with commas or semicolons, and a window after ±, +/- or a slash', () => {
    expect(read({ visits: '0; 6,12 , 18.5' }).program.plannedVisitWeeks).toEqual([0, 6, 12, 18.5]);
    expect(read({ reviews: '12 ± 3, 26+/-4; 52/5' }).program.reviews).toEqual([
      { week: 12, windowWeeks: 3 },
      { week: 26, windowWeeks: 4 },
      { week: 52, windowWeeks: 5 },
    ]);
    expect(read({}).program).toMatchObject({ plannedVisitWeeks: [], reviews: [], expectedChange: [] });
  });

  test.each([
    ['visits', { visits: '0, six' }],
    ['visits', { visits: '-3, 6' }],
    ['reviews', { reviews: '12' }],
    ['reviews', { reviews: '12 ± 0' }],
    ['reviews', { reviews: '12 ± 3 ± 1' }],
  ])('says what of %s cannot be read', (field, draft) => {
    expect(read(draft).unreadable).toEqual([{ field, place: 0 }]);
  });

  test('keeps a phase with its weeks, and names the one that cannot be read', () => {
    const phase = { measure: 'ffm' as const, fromWeek: '', toWeek: '12', perKg: '0.25', perMonth: '' };
    expect(read({ expected: [phase] }).program.expectedChange).toEqual([
      { measure: 'ffm', fromWeek: 0, toWeek: 12, perKgWeightChange: 0.25, perMonth: 0 },
    ]);
    expect(read({ expected: [{ ...phase, perMonth: '−0.1' }] }).program.expectedChange[0]?.perMonth).toBe(-0.1);
    expect(read({ expected: [phase, { ...phase, perKg: '0,25' }] }).unreadable).toEqual([
      { field: 'expected', place: 1 },
    ]);
  });
});

test('an entered enrolment stands in the place of what was entered before, and can be taken back', () => {
  const entry = { client: 'a', program: 'Walking', start: '2025-01-06', end: null, endReason: null, initials: '' };
  const ended = { ...entry, end: '2025-05-05', endReason: 'moved' as const };
  const settings = settingsSchema.parse({});
  const twice = withEnrolment(withEnrolment(settings, entry), ended);
  expect(twice.enrolments).toEqual([ended]);
  expect(enteredEnrolment(twice, entry)).toEqual(ended);
  expect(enteredEnrolment(twice, { ...entry, start: null })).toBeUndefined();
  expect(withoutEnrolment(twice, entry)).toEqual(settings);
});
