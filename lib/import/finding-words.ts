import { findingWords as words } from '../core/messages/en/finding-words';
import { COLUMN_BY_NAME } from './columns';
import type { FindingKind } from './plan';

/** Findings that a person answers. */
const QUESTIONS: ReadonlySet<string> = new Set([
  'far_off',
  'above_resistance',
  'missing_code',
  'summary_row',
  'early_visit',
  'id_as_number',
]);

interface FindingText {
  readonly message: string;
  readonly remedy: string;
}

/** What a finding says and what to do about it, by its code; `became` is what a changed cell is read as. */
export const findingText = (code: string, column: string, kind?: FindingKind, became = ''): FindingText => {
  if (QUESTIONS.has(code) && kind === 'warning') return words.keptByAnswer(column);
  if (QUESTIONS.has(code) && kind === 'refused') return words.refusedByAnswer(column);
  if (kind === 'changed') return code === 'corrected' ? words.corrected(column, became) : words.changed(column, became);
  const known = COLUMN_BY_NAME.get(column);
  const { limits, choices, unit } = known ?? {};
  switch (code) {
    case 'no_client':
      return words.noClient;
    case 'no_date':
      return words.noDate;
    case 'after_import':
      return words.afterImport;
    case 'before_birth':
      return words.beforeBirth;
    case 'no_value':
      return words.noValue;
    case 'not_positive':
      return words.notPositive(column);
    case 'far_off':
      return words.farOff(column, limits?.ask ?? [0, 0], unit ?? '');
    case 'missing_code':
      return words.missingCode(column);
    case 'summary_row':
      return words.summaryRow;
    case 'early_visit':
      return words.earlyVisit;
    case 'id_as_number':
      return words.idAsNumber;
    case 'id_like_date':
      return words.idLikeDate;
    case 'short_year':
      return words.shortYear(column);
    case 'other_calendar':
      return words.otherCalendar(column);
    case 'heading_again':
      return words.headingAgain;
    case 'other_heading':
      return words.otherHeading;
    case 'text_line':
      return words.textLine;
    case 'above_resistance':
      return words.aboveResistance;
    case 'implausible':
      return words.implausible(column, limits?.warn ?? [0, 0], unit ?? '');
    case 'rare':
      return words.rare(column, limits?.rareAbove ?? 0, unit ?? '');
    case 'unknown_word':
      return words.unknownWord(column, choices ?? []);
    case 'unreadable_choice':
      return words.unreadableChoice(column, choices ?? []);
    case 'unreadable_date':
      return words.unreadableDate(column);
    case 'unreadable_time':
      return words.unreadableTime(column);
    case 'unreadable_flag':
      return words.unreadableFlag(column);
    case 'unreadable_integer':
      return words.unreadableInteger(column);
    case 'unreadable_number':
      return words.unreadableNumber(column);
    case 'ragged':
      return words.ragged;
    case 'too_long':
      return words.tooLong;
    case 'broken_quote':
      return words.brokenQuote;
    case 'no_program':
      return words.noProgram;
    case 'end_before_start':
      return words.endBeforeStart;
    case 'same_figures':
      return words.sameFigures;
    case 'same_number':
      return words.sameNumber;
    case 'not_this_one':
      return words.notThisOne;
    case 'superseded':
      return words.superseded;
    case 'replaced':
      return words.replaced;
    case 'set-aside':
      return words.setAside;
    case 'erased':
      return words.erased;
    default:
      return words.duplicate;
  }
};
