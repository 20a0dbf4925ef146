'use client';

import type { Mapping } from '../../../lib/import/mapping';
import { useMessages } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { useSession } from '../../_state/workspace-provider';
import { Failing } from '../../_ui/states';
import styles from './import-screen.module.css';
import { useSaveMapping } from './use-save-mapping';

const NAMED = 4;

/** The mappings that are remembered for their headers. */
export const ClinicMappings = () => {
  const words = useMessages().importScreen.clinic.mappings;
  const { mappings, clinic } = useSession();
  const { busy, error, start } = useActing();
  const saveMapping = useSaveMapping();
  if (clinic.kind === 'demo' || mappings.length === 0) return null;
  const nameOf = ({ header }: Mapping): string =>
    words.first({ names: header.slice(0, NAMED), more: Math.max(0, header.length - NAMED) });
  return (
    <section className="sheet stack" aria-labelledby="clinic-mappings" aria-busy={busy}>
      <h2 id="clinic-mappings">{words.title}</h2>
      <ul className={styles.answered}>
        {mappings.map((mapping) => (
          <li key={JSON.stringify(mapping.header)}>
            <span>
              <bdi>{nameOf(mapping)}</bdi>{' '}
              <span className="quiet small">
                {words.line({
                  columns: mapping.header.length,
                  used: new Set(mapping.columns.flatMap(({ from }) => from)).size,
                })}
              </span>
            </span>
            <span className={styles.buttons}>
              <button
                type="button"
                className="button"
                aria-label={words.saveOf({ names: nameOf(mapping) })}
                onClick={() => {
                  saveMapping(mapping, true);
                }}
              >
                {words.save}
              </button>
              <button
                type="button"
                className="button"
                disabled={busy}
                aria-label={words.forgetOf({ names: nameOf(mapping) })}
                onClick={() => void start((workspace) => workspace.forgetMapping(mapping.header))}
              >
                {words.forget}
              </button>
            </span>
          </li>
        ))}
      </ul>
      <p className="quiet small">{words.note}</p>
      {error === undefined ? null : <Failing error={error} />}
    </section>
  );
};
