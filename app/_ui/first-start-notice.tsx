'use client';

import { useMessages, usePreferences } from '../_state/language-provider';
import { useWorkspace } from '../_state/workspace-provider';
import { FilterLink } from './filter-link';
import styles from './notice.module.css';

/** Once on a machine: where the data lies, and who does not see it. */
export const FirstStartNotice = () => {
  const words = useMessages().shell.firstStart;
  const { state } = useWorkspace();
  const { preferences, setPreferences } = usePreferences();
  if (state.kind !== 'open' || preferences.keepingNoticeRead) return null;
  return (
    <aside className={styles.notice} aria-label={words.label}>
      <p className={styles.text}>
        {words.text} <FilterLink href="/settings/#keeping">{words.more}</FilterLink>
      </p>
      <button
        type="button"
        className="button"
        onClick={() => {
          setPreferences({ ...preferences, keepingNoticeRead: true });
        }}
      >
        {words.close}
      </button>
    </aside>
  );
};
