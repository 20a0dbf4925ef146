import type { Settings } from '../../../lib/cohort/settings';
import type { MeasureId } from '../../../lib/measures/measure-id';

export type ErrorChoice = Settings['errorSource']['kind'];

/** One line of the form: as typed. */
export interface EnteredLine {
  readonly measure: MeasureId;
  readonly sd: string;
  readonly df: string;
}

type Entered = Extract<Settings['errorSource'], { readonly kind: 'entered' }>['values'];

/** What is wrong with the lines, or the values they hold; an empty line counts as none. */
export type EnteredValues =
  | { readonly ok: true; readonly values: Entered }
  | { readonly ok: false; readonly fault: 'needsValue' }
  | { readonly ok: false; readonly fault: 'wrongValue' | 'twice'; readonly measure: MeasureId };

const decimalOf = (text: string): number => {
  const plain = text.trim().replace(',', '.');
  return /^\d+(\.\d+)?$/.test(plain) ? Number(plain) : Number.NaN;
};

const wholeOf = (text: string): number => (/^\d{1,6}$/.test(text.trim()) ? Number(text.trim()) : Number.NaN);

export const enteredValues = (lines: readonly EnteredLine[]): EnteredValues => {
  const values: Entered[number][] = [];
  for (const { measure, sd, df } of lines) {
    if (sd.trim() === '' && df.trim() === '') continue;
    const betweenDaySd = decimalOf(sd);
    const degrees = wholeOf(df);
    if (!(betweenDaySd > 0) || !(degrees >= 1)) return { ok: false, fault: 'wrongValue', measure };
    if (values.some((value) => value.measure === measure)) return { ok: false, fault: 'twice', measure };
    values.push({ measure, betweenDaySd, df: degrees });
  }
  return values.length === 0 ? { ok: false, fault: 'needsValue' } : { ok: true, values };
};

/** The lines that a form starts from. */
export const enteredLines = (source: Settings['errorSource'], lean: MeasureId): readonly EnteredLine[] =>
  source.kind === 'entered' && source.values.length > 0
    ? source.values.map(({ measure, betweenDaySd, df }) => ({ measure, sd: String(betweenDaySd), df: String(df) }))
    : [{ measure: lean, sd: '', df: '' }];

/** The error source of a choice; an entered one needs its values. */
export const errorSourceOf = (
  choice: ErrorChoice,
  values: Entered,
  before: Settings['errorSource'],
): Settings['errorSource'] => {
  const { alwaysT } = before;
  return choice === 'entered' ? { kind: choice, values, alwaysT } : { kind: choice, alwaysT };
};
