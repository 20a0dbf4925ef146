import type { Settings } from '../cohort/settings';
import { clientIds } from './client-ids';
import type { Mark } from './clinic-state';

/** What a clinic keeps about a client beside the files, as marks: one of each. */
export const CLIENT_MARKS = [
  /** One goal, in the client's own words. */
  'goal',
  /** The name shown in place of that of the files. */
  'display-name',
  'also-known-as',
  /** `y`: no weight or fat on anything the client sees. */
  'no-weight-or-fat',
  /** Physical activity level that was entered, as a number with a decimal point. */
  'activity-level',
  /** Id of the waist or waist-to-height cut-off that was chosen with the client. */
  'waist-cut-off',
] as const;

export type ClientMarkKind = (typeof CLIENT_MARKS)[number];

/** The marks of one client, under whatever spelling of the id; the newest of each kind. */
export type ClientMarks = Readonly<Partial<Record<ClientMarkKind, Mark>>>;

const isClientMark = (kind: string): kind is ClientMarkKind => CLIENT_MARKS.some((known) => known === kind);

export const clientMarks = (
  { marks, settings }: { readonly marks: readonly Mark[]; readonly settings: Settings },
  client: string,
): ClientMarks => {
  const ids = clientIds(settings, client);
  const own: Partial<Record<ClientMarkKind, Mark>> = {};
  for (const mark of marks) if (ids.has(mark.client) && isClientMark(mark.kind)) own[mark.kind] = mark;
  return own;
};

/** The client's name: as the clinic shows it, else as exported; null where there is neither. */
export const shownName = (
  marks: ClientMarks,
  { familyName, givenName }: { readonly familyName: string | null; readonly givenName: string | null },
): string | null => {
  const shown = marks['display-name']?.value ?? '';
  if (shown !== '') return shown;
  const parts = [familyName, givenName].filter((part) => part !== null && part !== '');
  return parts.length === 0 ? null : parts.join(', ');
};

/** A physical activity level as entered; undefined where it is none between 1 and 3. */
export const enteredActivityLevel = (text: string): number | undefined => {
  const level = /^\d([.,]\d{1,2})?$/.test(text.trim()) ? Number(text.trim().replace(',', '.')) : NaN;
  return level >= 1 && level <= 3 ? level : undefined;
};
