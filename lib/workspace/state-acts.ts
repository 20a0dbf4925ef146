import { workspaceErrors as errors } from '../core/messages/en/workspace-errors';
import { err } from '../core/result';
import { sameValue } from '../core/same-value';
import type { ClinicBody, ClinicState, LogEntry } from './clinic-state';
import { changed, redone, undone } from './history';
import type { Outcome, Workspace } from './workspace';
import type { Workbench } from './workbench';

/** The next state and what the log says of it. */
type Step = readonly [state: ClinicState, entry: LogEntry];

/** Changes of a clinic's state: every one of them is logged and can be undone. */
export const stateActs = (
  bench: Workbench,
): Pick<
  Workspace,
  | 'saveSettings'
  | 'correct'
  | 'removeCorrection'
  | 'setAsideRows'
  | 'bringBack'
  | 'writeNote'
  | 'writeMark'
  | 'forgetMapping'
  | 'setRetention'
  | 'removeImport'
  | 'undo'
  | 'redo'
> => {
  const { randomId } = bench.parts;
  const sign: Workbench['sign'] = (code, details) => bench.sign(code, details);
  const signed = ({ initials, at }: LogEntry) => ({ id: randomId(), initials, at });

  const change = (make: (state: ClinicState) => Step): Outcome =>
    bench.inTurn(async () => {
      const kept = await bench.writable();
      if (!kept.ok) return kept;
      const [state, entry] = make(kept.value.body.state);
      if (sameValue(state, kept.value.body.state)) return bench.session();
      return bench.enact(kept.value, changed(kept.value.body, state, entry));
    });

  const step = (
    move: (body: ClinicBody) => ClinicBody | undefined,
    nothing: (typeof errors)['nothingToUndo' | 'nothingToRedo'],
  ): Outcome =>
    bench.inTurn(async () => {
      const kept = await bench.writable();
      if (!kept.ok) return kept;
      const body = move(kept.value.body);
      return body === undefined ? err(nothing) : bench.enact(kept.value, body);
    });

  return {
    saveSettings: (settings) =>
      change((state) => [
        { ...state, settings },
        sign(
          sameValue({ ...settings, answers: [] }, { ...state.settings, answers: [] }) ? 'answered' : 'settings-changed',
        ),
      ]),
    correct: (changes, reason) =>
      change((state) => {
        const cells = new Set(
          changes.map(({ row, column }) => JSON.stringify([row.source, row.line, row.part, column])),
        );
        const others = state.corrections.filter(
          ({ row, column }) => !cells.has(JSON.stringify([row.source, row.line, row.part, column])),
        );
        const entry = sign('corrected', { rows: new Set(changes.map(({ row }) => JSON.stringify(row))).size });
        const fresh = changes.map(({ row, column, from, to }) => ({ ...signed(entry), row, column, from, to, reason }));
        return [{ ...state, corrections: [...others, ...fresh] }, entry];
      }),
    removeCorrection: (id) =>
      change((state) => [
        { ...state, corrections: state.corrections.filter((correction) => correction.id !== id) },
        sign('correction-removed'),
      ]),
    setAsideRows: (rows, reason) =>
      change((state) => {
        const entry = sign('set-aside', { rows: rows.length });
        const fresh = rows.map((row) => ({ ...signed(entry), row, reason }));
        return [{ ...state, setAside: [...state.setAside, ...fresh] }, entry];
      }),
    bringBack: (id) =>
      change((state) => [
        { ...state, setAside: state.setAside.filter((item) => item.id !== id) },
        sign('set-aside-removed'),
      ]),
    writeNote: (client, text) =>
      change((state) => {
        const entry = sign('note-written');
        return [{ ...state, notes: [...state.notes, { ...signed(entry), client, text }] }, entry];
      }),
    writeMark: (client, kind, value) =>
      change((state) => {
        const others = state.marks.filter((mark) => mark.client !== client || mark.kind !== kind);
        const entry = sign('mark-written');
        const marks = value === '' ? others : [...others, { ...signed(entry), client, kind, value }];
        return [{ ...state, marks }, entry];
      }),
    forgetMapping: (header) =>
      change((state) => [
        { ...state, mappings: state.mappings.filter((mapping) => !sameValue(mapping.header, header)) },
        sign('mapping-changed'),
      ]),
    setRetention: (retentionMonths) =>
      change((state) => [
        { ...state, retentionMonths },
        sign('retention-set', retentionMonths === null ? {} : { months: retentionMonths }),
      ]),
    removeImport: (id) =>
      change((state) => {
        const gone = state.imports.find((entry) => entry.id === id);
        const isOther = (item: { readonly row: { readonly source: string } }): boolean =>
          !item.row.source.startsWith(`${id}/`);
        return [
          {
            ...state,
            imports: state.imports.filter((entry) => entry.id !== id),
            corrections: state.corrections.filter(isOther),
            setAside: state.setAside.filter(isOther),
          },
          sign('import-removed', { files: gone?.files.map((file) => file.name).join(', ') ?? '' }),
        ];
      }),
    undo: () => step((body) => undone(body, (entry) => sign('undone', { what: entry.code })), errors.nothingToUndo),
    redo: () => step((body) => redone(body, (entry) => sign('redone', { what: entry.code })), errors.nothingToRedo),
  };
};
