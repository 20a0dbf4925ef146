import type { ExpectedChange, ProgramSettings } from '../../../lib/cohort/settings-parts/program-settings';

/** An expectation as it is typed. */
export interface ExpectedDraft {
  readonly measure: ExpectedChange['measure'];
  readonly fromWeek: string;
  readonly toWeek: string;
  readonly perKg: string;
  readonly perMonth: string;
}

/** A program as it is typed. */
export interface ProgramDraft {
  readonly name: string;
  readonly visits: string;
  readonly reviews: string;
  readonly weight: NonNullable<ProgramSettings['intended']['weight']> | 'none';
  readonly lean: NonNullable<ProgramSettings['intended']['lean']> | 'none';
  readonly expected: readonly ExpectedDraft[];
}

const zeroAsEmpty = (value: number): string => (value === 0 ? '' : String(value));

export const draftOf = (program: ProgramSettings): ProgramDraft => ({
  name: program.name,
  visits: program.plannedVisitWeeks.join(', '),
  reviews: program.reviews.map(({ week, windowWeeks }) => `${String(week)} ± ${String(windowWeeks)}`).join(', '),
  weight: program.intended.weight ?? 'none',
  lean: program.intended.lean ?? 'none',
  expected: program.expectedChange.map(({ measure, fromWeek, toWeek, perKgWeightChange, perMonth }) => ({
    measure,
    fromWeek: zeroAsEmpty(fromWeek),
    toWeek: toWeek === null ? '' : String(toWeek),
    perKg: zeroAsEmpty(perKgWeightChange),
    perMonth: zeroAsEmpty(perMonth),
  })),
});

export const EMPTY_DRAFT: ProgramDraft = {
  name: '',
  visits: '',
  reviews: '',
  weight: 'none',
  lean: 'none',
  expected: [],
};
