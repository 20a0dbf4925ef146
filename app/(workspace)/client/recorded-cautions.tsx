'use client';

import { useState } from 'react';
import { recordedCautions, type RecordedCaution } from '../../../lib/workspace/recorded-cautions';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { Empty, Loading } from '../../_ui/states';
import styles from './client-notes.module.css';
import { useClientRows } from './use-client-rows';

const Listed = ({ client }: { readonly client: string }) => {
  const words = useMessages().client.recordedCautions;
  const formatters = useFormatters();
  const answer = useClientRows(client);
  if (answer.kind === 'failed') return <Empty title={words.failed} />;
  if (answer.kind !== 'read') return <Loading />;
  const cautions = recordedCautions(answer.rows);
  const line = ({ column, value, dates }: RecordedCaution): string =>
    words.line({ what: words.what({ column, value }), dates: dates.map((date) => formatters.date(date)) });
  return (
    <>
      {cautions.length === 0 ? (
        <p>{words.none}</p>
      ) : (
        <ul className={styles.notes}>
          {cautions.map((caution) => (
            <li key={`${caution.column} ${caution.value}`}>{line(caution)}</li>
          ))}
        </ul>
      )}
      <p className="quiet small">{words.lead}</p>
    </>
  );
};

/** The cautions recorded for one client, once asked for: on the client's own screen, never on paper. */
export const RecordedCautions = ({ client }: { readonly client: string }) => {
  const words = useMessages().client.recordedCautions;
  const [open, setOpen] = useState(false);
  return (
    <section className={`${styles.recorded ?? ''} no-print`} aria-label={words.title}>
      <button
        type="button"
        className="button"
        aria-expanded={open}
        onClick={() => {
          setOpen(!open);
        }}
      >
        {open ? words.hide : words.show}
      </button>
      {open ? <Listed client={client} /> : null}
    </section>
  );
};
