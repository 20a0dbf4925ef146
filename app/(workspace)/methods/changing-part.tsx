'use client';

import type { ReactNode } from 'react';
import { useMessages } from '../../_state/language-provider';
import { useSession } from '../../_state/workspace-provider';
import styles from './methods-screen.module.css';

/** What changes the clinic’s methods: on paper as it stands, out of use in a tab that only reads. */
export const ChangingPart = ({ children }: { readonly children: ReactNode }) => {
  const words = useMessages().settings;
  const { writer } = useSession().keeping;
  return (
    <>
      {writer ? null : <p className="quiet small no-print">{words.readerOnly}</p>}
      <fieldset className={styles.changing} disabled={!writer}>
        {children}
      </fieldset>
    </>
  );
};
