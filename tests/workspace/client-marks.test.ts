import { describe, expect, test } from 'vitest';
import { nextPlannedVisit } from '../../lib/cohort/next-planned-visit';
import { DEFAULT_SETTINGS, settingsSchema } from '../../lib/cohort/settings';
import type { ClientVisit } from '../../lib/cohort/types/client-detail';
import type { IsoDate } from '../../lib/core/iso-date';
import { DEFAULT_CATALOGUE } from '../../lib/measures/catalogue';
import { clientMarks, enteredActivityLevel, shownName } from '../../lib/workspace/client-marks';
import type { Mark } from '../../lib/workspace/clinic-state';
import { namesOfClients } from '../../lib/workspace/names-of-clients';
import { otherCoding } from '../../lib/workspace/other-coding';
import { withSexCoding } from '../../lib/workspace/with-sex-coding';

const mark = (client: string, kind: string, value: string): Mark => ({
  id: `${client} ${kind}`,
  client,
  kind,
  value,
  initials: 'AB',
  at: '2026-01-02T10:00:00Z',
});
const day = (text: string): IsoDate => text as IsoDate;

describe('what is kept about a client', () => {
  test('is found under every spelling of the id, and other marks are none of it', () => {
    const settings = settingsSchema.parse({
      answers: [{ kind: 'same-client', ids: ['a-1', 'A1'], client: 'A1' }],
    });
    const marks = [mark('a-1', 'goal', 'Walk'), mark('A1', 'called', 'y'), mark('B', 'goal', 'Run')];
    expect(Object.values(clientMarks({ marks, settings }, 'A1')).map(({ value }) => value)).toEqual(['Walk']);
  });

  test('the name to show goes before the exported one; without either there is none', () => {
    const exported = { familyName: 'Huresby', givenName: null };
    const marks = clientMarks({ marks: [mark('A', 'display-name', 'Mo')], settings: DEFAULT_SETTINGS }, 'A');
    expect([shownName(marks, exported), shownName({}, exported)]).toEqual(['Mo', 'Huresby']);
    expect(shownName({}, { familyName: '', givenName: null })).toBeNull();
  });

  test('a physical activity level is a number from 1 to 3, with a point or a comma', () => {
    expect(['1.6', '1,65', ' 2 '].map(enteredActivityLevel)).toEqual([1.6, 1.65, 2]);
    for (const text of ['', '0.9', '3.1', '9', '1.605', 'x', '-1', '1e0'])
      expect(enteredActivityLevel(text)).toBeUndefined();
  });

  test('one sex coding is kept for a client, in the place of the one before', () => {
    const once = withSexCoding(DEFAULT_SETTINGS, 'A', 'F');
    const twice = withSexCoding(withSexCoding(once, 'B', 'M'), 'A', 'M');
    expect(twice.answers).toEqual([
      { kind: 'sex-for-equations', client: 'B', sex: 'M' },
      { kind: 'sex-for-equations', client: 'A', sex: 'M' },
    ]);
  });
});

test('the other sex coding of a visit differs by the equation’s own term, 4.229 kg in Kyle 2001', () => {
  const visit = { values: { ffm: 50, weight: 80, r: 500, xc: 50 } } as Partial<ClientVisit> as ClientVisit;
  const ffm = DEFAULT_CATALOGUE.measure('ffm');
  const other = otherCoding(ffm, visit, { sexForEquations: 'M', seriesHeightCm: 176 }, 60);
  expect(other?.sex).toBe('F');
  expect(other?.value).toBeCloseTo(50 - 4.229, 9);
  expect(otherCoding(ffm, visit, { sexForEquations: null, seriesHeightCm: 176 }, 60)).toBeUndefined();
  const weight = DEFAULT_CATALOGUE.measure('weight');
  expect(otherCoding(weight, visit, { sexForEquations: 'M', seriesHeightCm: 176 }, 60)).toBeUndefined();
});

describe('the next planned visit', () => {
  const { programs } = settingsSchema.parse({ programs: [{ name: 'Walking', plannedVisitWeeks: [0, 6, 12] }] });
  const enrolled = (end: string | null) => ({
    visits: [],
    enrolments: [
      {
        program: 'Walking',
        start: day('2025-01-06'),
        end: end === null ? null : day(end),
      },
    ],
  });

  test('is the first planned day after as-of', () => {
    expect(nextPlannedVisit(enrolled(null), programs, day('2025-01-10'))).toBe('2025-02-17');
    expect(nextPlannedVisit(enrolled(null), programs, day('2025-02-17'))).toBe('2025-03-31');
  });

  test('is none after the last planned day, after the program’s end, or without a plan', () => {
    expect(nextPlannedVisit(enrolled(null), programs, day('2025-06-01'))).toBeUndefined();
    expect(nextPlannedVisit(enrolled('2025-01-20'), programs, day('2025-01-31'))).toBeUndefined();
    expect(nextPlannedVisit(enrolled(null), [], day('2025-01-10'))).toBeUndefined();
  });
});

describe('the names of all clients', () => {
  const settings = settingsSchema.parse({ answers: [{ kind: 'same-client', ids: ['a-1', 'A1'], client: 'A1' }] });
  const marks = [mark('a-1', 'display-name', 'Mo'), mark('A1', 'also-known-as', 'Molly'), mark('B', 'goal', 'Run')];
  const namesOf = namesOfClients({ marks, settings });

  test('are the one shown, the one of the files and what the client is also known as, under every spelling of the id', () => {
    expect(namesOf({ client: 'A1', familyName: 'Huresby', givenName: 'Maud' })).toEqual({
      shown: 'Mo',
      exported: 'Huresby, Maud',
      alsoKnownAs: 'Molly',
    });
    expect(namesOf({ client: 'B', familyName: null, givenName: 'Ben' })).toEqual({
      shown: 'Ben',
      exported: 'Ben',
      alsoKnownAs: null,
    });
  });

  test('are those that stand with each client alone', () => {
    for (const client of ['A1', 'B']) {
      const own = clientMarks({ marks, settings }, client);
      const row = { client, familyName: 'Huresby', givenName: null };
      expect(namesOf(row).shown).toBe(shownName(own, row));
      expect(namesOf(row).alsoKnownAs).toBe(own['also-known-as']?.value ?? null);
    }
  });
});
