'use client';

import { useMessages } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { ActNote } from '../../_ui/act-note';
import styles from './settings-screen.module.css';

/** The invented clinic, as it was delivered, with or without condition columns. */
export const DemoPanel = () => {
  const words = useMessages().settings.clinics;
  const acting = useActing();
  const putBack = (withoutConditions: boolean): void =>
    void acting.start((workspace) => workspace.openDemo({ withoutConditions }), words.demoBack);
  return (
    <div className={styles.panel}>
      <h3>{words.demoTitle}</h3>
      <p>
        {words.demoLead} {words.demoPlainNote}
      </p>
      <div className="row">
        <button
          type="button"
          className="button"
          disabled={acting.busy}
          onClick={() => {
            putBack(false);
          }}
        >
          {words.demoOpen}
        </button>
        <button
          type="button"
          className="button"
          disabled={acting.busy}
          onClick={() => {
            putBack(true);
          }}
        >
          {words.demoPlain}
        </button>
      </div>
      <ActNote acting={acting} />
    </div>
  );
};
