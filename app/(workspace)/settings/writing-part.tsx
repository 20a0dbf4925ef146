'use client';

import type { ReactNode } from 'react';
import { useMessages } from '../../_state/language-provider';
import { useSession } from '../../_state/workspace-provider';
import styles from './settings-screen.module.css';

/** Controls that change the clinic: out of use in a tab that only reads. */
export const WritingPart = ({ children }: { readonly children: ReactNode }) => {
  const words = useMessages().settings;
  const { writer } = useSession().keeping;
  return (
    <>
      {writer ? null : <p className="quiet small no-print">{words.readerOnly}</p>}
      <fieldset className={styles.writing} disabled={!writer}>
        {children}
      </fieldset>
    </>
  );
};
