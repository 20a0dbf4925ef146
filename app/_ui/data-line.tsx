'use client';

import { useFormatters, useMessages } from '../_state/language-provider';
import { useSession } from '../_state/workspace-provider';
import styles from './data-line.module.css';

/** What the page stands on, for screen and paper: clinic, last visit, data version; and what estimates are. */
export const DataLine = () => {
  const messages = useMessages();
  const formatters = useFormatters();
  const { clinic, cohort, dataVersion, corrections, setAside } = useSession();
  const changed = messages.shell.changedByPeople({ corrections: corrections.length, setAside: setAside.length });
  const line = messages.shell.dataLine({ asOf: formatters.date(cohort.summary.asOf), version: dataVersion });
  return (
    <footer className={styles.line}>
      <p>{messages.common.caution}</p>
      <p>
        <bdi>{clinic.name}</bdi>
        {clinic.invented ? ` · ${messages.common.invented}` : ''} · {line}
        {changed === '' ? '' : ` · ${changed}`}
      </p>
    </footer>
  );
};
