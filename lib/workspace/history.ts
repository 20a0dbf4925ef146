import type { ClinicBody, ClinicState, LogEntry } from './clinic-state';
import { withoutSharedBase } from './shared-base';

/** So many states can be gone back over. */
export const HISTORY_LIMIT = 50;

/** A body with one more line in its log. */
export const logged = (body: ClinicBody, entry: LogEntry): ClinicBody => ({ ...body, log: [...body.log, entry] });

/** A body whose state was changed: undo brings the state before back, and nothing can be redone. */
export const changed = (body: ClinicBody, state: ClinicState, entry: LogEntry): ClinicBody =>
  logged(
    {
      ...body,
      state,
      past: [...body.past, { state: body.state, undoes: entry }].slice(-HISTORY_LIMIT),
      future: [],
    },
    entry,
  );

/** The state before the last change; undefined where there is none. */
export const undone = (body: ClinicBody, sign: (undoes: LogEntry) => LogEntry): ClinicBody | undefined => {
  const last = body.past.at(-1);
  if (last === undefined) return undefined;
  return logged(
    {
      ...(last.undoes.code === 'merged' ? withoutSharedBase(body) : body),
      state: last.state,
      past: body.past.slice(0, -1),
      future: [...body.future, { state: body.state, redoes: last.undoes }],
    },
    sign(last.undoes),
  );
};

/** The state that was undone last; undefined where there is none. */
export const redone = (body: ClinicBody, sign: (redoes: LogEntry) => LogEntry): ClinicBody | undefined => {
  const next = body.future.at(-1);
  if (next === undefined) return undefined;
  return logged(
    {
      ...body,
      state: next.state,
      past: [...body.past, { state: body.state, undoes: next.redoes }].slice(-HISTORY_LIMIT),
      future: body.future.slice(0, -1),
    },
    sign(next.redoes),
  );
};
