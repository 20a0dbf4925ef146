import { describe, expect, it } from 'vitest';
import { clientIndexPath } from '../../app/(workspace)/indices/client-index-path';
import { indexFinding } from '../../app/(workspace)/indices/index-finding';
import { indexGroups } from '../../app/(workspace)/indices/index-groups';
import { indicesFigure } from '../../app/(workspace)/indices/indices-figure';
import type { ChangeRow } from '../../lib/cohort/types/change-row';
import type { ClientDetail, ClientVisit } from '../../lib/cohort/types/client-detail';
import type { IndexPoint } from '../../lib/cohort/types/cohort-summary';
import { createFormatters } from '../../lib/core/formatters';
import type { IsoDate } from '../../lib/core/iso-date';
import { indices } from '../../lib/core/messages/en/indices';
import { guardsOf } from '../../lib/measures/guard';
import { MEASURE_FACTS } from '../../lib/measures/measure-facts';
import { MUTED_GROUP } from '../../lib/figures/group-style';

const f = createFormatters();
const words = indices(f);

const point = (clientKey: number, program: string, ffmi: number, fmi: number, held = false): IndexPoint => ({
  clientKey,
  client: `OM-${clientKey}`,
  program,
  sex: 'F',
  date: '2025-03-04' as IsoDate,
  ffmi,
  fmi,
  held,
});

describe('the sentence over the index chart', () => {
  it('counts held people apart', () => {
    expect(indexFinding([point(1, 'A', 16, 8), point(2, 'A', 17, 9), point(3, 'A', 22, 20, true)], words)).toBe(
      '2 people by fat-free mass and fat mass for their height; one more is held, outside the group the equation was made for.',
    );
  });

  it('says when all are held or nobody is there', () => {
    expect(indexFinding([point(3, 'A', 22, 20, true)], words)).toContain('All one person is held');
    expect(indexFinding([], words)).toBe(words.none);
  });
});

describe('the table beside the index chart', () => {
  it('gives medians of the people who are not held, from five on', () => {
    const five = [14, 15, 16, 17, 18].map((ffmi, index) => point(index, 'A', ffmi, ffmi - 8));
    const rows = indexGroups([...five, point(9, 'A', 30, 30, true), point(10, 'B', 15, 5)], ['A', 'B']);
    expect(rows).toEqual([
      { program: 'A', n: 5, held: 1, ffmi: 16, fmi: 8 },
      { program: 'B', n: 1, held: 0 },
    ]);
  });
});

describe('the index chart', () => {
  it('puts held people into a muted group', () => {
    const data = indicesFigure([point(1, 'B', 16, 8), point(2, 'A', 22, 20, true)], ['A', 'B'], [], words, f);
    expect(data.groups.map((group) => [group.label, group.shapeIndex, group.n])).toEqual([
      ['Held', MUTED_GROUP, 1],
      ['B', 1, 1],
    ]);
    expect(data).not.toHaveProperty('path');
  });

  it('draws one client’s path: no point where composition is stopped, joined only where two visits may be compared', () => {
    const visit = (number: number, date: string, more: Partial<ClientVisit>): ClientVisit => ({
      visit: number,
      date: date as IsoDate,
      purpose: 'routine',
      site: null,
      device: null,
      position: null,
      posture: null,
      readings: 1,
      values: { ffmi: 16 + number, fmi: 8 },
      conditions: {},
      guards: [],
      outsideEquation: {},
      ...more,
    });
    const step = (fromVisit: number, toVisit: number, more: Partial<ChangeRow>): ChangeRow => ({
      clientKey: 1,
      client: 'OM-1',
      program: 'A',
      measure: 'ffmi',
      purpose: 'consecutive',
      reviewWeek: null,
      from: '2025-01-01' as IsoDate,
      to: '2025-03-01' as IsoDate,
      fromVisit,
      toVisit,
      kFrom: 1,
      kTo: 1,
      valueFrom: 17,
      valueTo: 18,
      change: 1,
      lsc: 0.6,
      tier: 1,
      errorGroup: null,
      comparable: 'comparable',
      admitted: true,
      result: 'up',
      guard: 'none',
      reasons: [],
      noted: [],
      terms: null,
      ...more,
    });
    const client: ClientDetail = {
      clientKey: 1,
      client: 'OM-1',
      familyName: null,
      givenName: null,
      sexForEquations: 'F',
      sexesRecorded: ['F'],
      ageAtLatest: 50,
      seriesHeightCm: 165,
      enrolments: [],
      visits: [
        visit(1, '2025-01-01', {}),
        visit(2, '2025-02-01', { values: {} }),
        visit(3, '2025-03-01', { comparableWithBaseline: 'no' }),
        visit(4, '2025-04-01', { comparableWithBaseline: 'caution' }),
        visit(5, '2025-05-01', {}),
        visit(6, '2025-06-01', { guards: ['pregnancy'] }),
        visit(7, '2025-07-01', {}),
        visit(8, '2025-08-01', { purpose: 'precision' }),
      ],
      pairs: [],
      latestChanges: [],
      indexSteps: [
        step(1, 3, { comparable: 'no', result: 'cannot-compare' }),
        step(3, 4, { comparable: 'no', result: 'cannot-compare' }),
        step(4, 5, {}),
        step(5, 6, { guard: 'stop', result: null }),
        step(6, 7, { guard: 'stop', result: null }),
      ],
      missing: [],
      vector: { vectors: [], change: null, ellipse: null, error: null, parts: null },
      confidence: null,
      energy: null,
      waist: null,
    };
    const { path, stopped, held } = clientIndexPath(
      client,
      (measure) => guardsOf({ group: MEASURE_FACTS[measure].group }),
      words,
      f,
    );
    expect(path.map(({ dateLabel, comparable, joined }) => [dateLabel, comparable, joined])).toEqual([
      ['1 Jan 2025', true, false],
      ['1 Mar 2025', false, false],
      ['1 Apr 2025', true, false],
      ['1 May 2025', true, true],
      ['1 Jul 2025', true, false],
    ]);
    expect([stopped, held]).toEqual([1, false]);
  });
});
