import { describe, expect, test } from 'vitest';
import { programProblems } from '../../lib/workspace/program-problems';
import { settingsSchema, type SettingsInput } from '../../lib/cohort/settings';
import { weightIntention } from '../../lib/cohort/weight-intention';
import { parseSettings } from '../../lib/workspace/parse-settings';
import { committedFile } from '../sample-data/committed-file';

type ProgramInput = NonNullable<SettingsInput['programs']>[number];

const programOf = (more: Partial<ProgramInput> = {}) => {
  const [program] = settingsSchema.parse({ programs: [{ name: 'Walking', ...more }] }).programs;
  if (program === undefined) throw new Error('no program');
  return program;
};
const codes = (more: Partial<ProgramInput>, others: readonly ProgramInput[] = []): readonly string[] =>
  programProblems(programOf(more), settingsSchema.parse({ programs: others }).programs).map(
    ({ severity, code }) => `${severity} ${code}`,
  );
const review = (week: number, windowWeeks: number) => ({ week, windowWeeks });

describe('how a program is set', () => {
  test('has nothing wrong for every program of the demo clinic', () => {
    const { programs } = settingsSchema.parse(JSON.parse(committedFile('settings.json')));
    expect(programs).toHaveLength(5);
    for (const program of programs) {
      expect(
        programProblems(
          program,
          programs.filter((other) => other !== program),
        ),
      ).toEqual([]);
    }
  });

  test('needs a name of its own, whatever its capitals', () => {
    expect(codes({ name: '  ' })).toEqual(['error name-missing']);
    expect(codes({ name: 'walking ' }, [{ name: 'Walking' }])).toEqual(['error name-taken']);
    expect(codes({ name: 'Running' }, [{ name: 'Walking' }])).toEqual([]);
  });

  test('names its weeks in order, none twice', () => {
    expect(codes({ plannedVisitWeeks: [0, 6, 12] })).toEqual([]);
    expect(codes({ plannedVisitWeeks: [0, 12, 6] })).toEqual(['error visits-not-in-order']);
    expect(codes({ plannedVisitWeeks: [0, 6, 6] })).toEqual(['error visits-not-in-order']);
    expect(codes({ reviews: [review(26, 3), review(12, 3)] })).toEqual(['error reviews-not-in-order']);
  });

  test('opens no window before the eighth day', () => {
    expect(codes({ reviews: [review(4, 3)] })).toEqual(['error window-reaches-baseline']);
    expect(codes({ reviews: [review(4, 2.8)] })).toEqual([]);
    expect(programProblems(programOf({ reviews: [review(3, 3)] }), [])[0]).toMatchObject({ week: 3, from: 0 });
  });

  test('may have windows that overlap, and says so; a last day is no first day', () => {
    expect(codes({ reviews: [review(12, 3), review(18, 3)] })).toEqual(['note windows-overlap']);
    expect(codes({ reviews: [review(12, 3), review(18.2, 3)] })).toEqual([]);
  });

  test('expects in phases that end after they begin and do not overlap for one value', () => {
    const phase = (fromWeek: number, toWeek: number | null, measure: 'ffm' | 'weight' = 'ffm') => ({
      measure,
      fromWeek,
      toWeek,
      perMonth: 0.2,
    });
    expect(codes({ expectedChange: [phase(0, 6), phase(6, null)] })).toEqual([]);
    expect(codes({ expectedChange: [phase(6, 6)] })).toEqual(['error phase-ends-first']);
    expect(codes({ expectedChange: [phase(0, 7), phase(6, null)] })).toEqual(['error phases-overlap']);
    expect(codes({ expectedChange: [phase(0, 7), phase(6, null, 'weight')] })).toEqual([]);
    expect(codes({ expectedChange: [{ measure: 'ffm' }] })).toEqual(['note phase-expects-nothing']);
  });
});

test('settings from before phases, intentions and entered enrolments are read as they were meant', () => {
  const old = {
    programs: [{ name: 'Walking', expectedChange: [{ measure: 'ffm', perKgWeightChange: 0.25 }] }],
  };
  const parsed = parseSettings(JSON.stringify(old));
  expect(parsed.ok && parsed.value).toMatchObject({
    enrolments: [],
    programs: [
      {
        plannedVisitWeeks: [],
        reviews: [],
        intended: { weight: null, lean: null },
        expectedChange: [{ measure: 'ffm', fromWeek: 0, toWeek: null, perKgWeightChange: 0.25, perMonth: 0 }],
      },
    ],
  });
});

test('settings whose programs cannot be kept are refused on the command line, with the place and why', () => {
  const parsed = parseSettings(JSON.stringify({ programs: [{ name: 'A' }, { name: 'B', reviews: [review(3, 3)] }] }));
  expect(parsed.ok ? '' : parsed.error.message).toContain('programs.1.reviews: the window of week 3 opens on day 0');
  expect(parseSettings(JSON.stringify({ programs: [{ name: 'B', reviews: [review(12, 3), review(18, 3)] }] })).ok).toBe(
    true,
  );
});

test('what a client’s own column says of weight goes before the program', () => {
  expect(weightIntention('loss', null)).toBe('loss');
  expect(weightIntention('loss', true)).toBe('loss');
  expect(weightIntention('loss', false)).toBe('neither');
  expect(weightIntention('neither', true)).toBe('change');
  expect(weightIntention(null, true)).toBe('change');
  expect(weightIntention(null, null)).toBeNull();
});
