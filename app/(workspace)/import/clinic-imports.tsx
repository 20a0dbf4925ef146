'use client';

import { parseIsoDate } from '../../../lib/core/iso-date';
import type { ImportRecord } from '../../../lib/workspace/clinic-state';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { useSession } from '../../_state/workspace-provider';
import { Failing } from '../../_ui/states';
import styles from './import-screen.module.css';

const rowsOf = (record: ImportRecord): number =>
  record.files.reduce((sum, file) => sum + file.tables.reduce((rows, table) => rows + table.rows, 0), 0);

/** The imports of the open clinic: each can be taken out again, and undo brings it back. */
export const ClinicImports = () => {
  const words = useMessages().importScreen.clinic.imports;
  const f = useFormatters();
  const session = useSession();
  const { busy, error, done, start } = useActing();
  if (session.clinic.kind === 'demo') return null;
  return (
    <section className="sheet stack" aria-labelledby="clinic-imports" aria-busy={busy}>
      <h2 id="clinic-imports">{words.title}</h2>
      {session.imports.length === 0 ? <p className="quiet">{words.none}</p> : null}
      <ul className={styles.answered}>
        {session.imports.map((record) => {
          const names = record.files.map(({ name }) => name);
          const day = parseIsoDate(record.on.slice(0, 10));
          const on = day === undefined ? record.on : f.date(day);
          return (
            <li key={record.id}>
              <span>
                <bdi>{f.list(names)}</bdi>{' '}
                <span className="quiet small">
                  {words.line({ on, rows: rowsOf(record), initials: record.initials })}
                </span>
              </span>
              <button
                type="button"
                className="button"
                disabled={busy || !session.keeping.writer}
                aria-label={words.removeOf({ names, on })}
                onClick={() => void start((workspace) => workspace.removeImport(record.id), words.removed)}
              >
                {words.remove}
              </button>
            </li>
          );
        })}
      </ul>
      <p role="status" className="small">
        {busy ? words.removing : (done ?? '')}
      </p>
      {error === undefined ? null : <Failing error={error} />}
    </section>
  );
};
