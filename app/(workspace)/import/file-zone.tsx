'use client';

import { useRef } from 'react';
import { useMessages } from '../../_state/language-provider';
import styles from './import-screen.module.css';

interface FileZoneProps {
  readonly onFiles: (files: readonly File[]) => void;
}

/** Where files are chosen; files dropped here, as anywhere on the window, are caught by the window. */
export const FileZone = ({ onFiles }: FileZoneProps) => {
  const words = useMessages().importScreen.zone;
  const input = useRef<HTMLInputElement>(null);
  return (
    <div className={`${styles.zone ?? ''} no-print`}>
      <p className={styles.zoneText}>{words.text}</p>
      <p className="quiet small">{words.or}</p>
      <label className={`button button-strong ${styles.chooser ?? ''}`}>
        {words.choose}
        <input
          ref={input}
          type="file"
          multiple
          onChange={(event) => {
            onFiles([...(event.target.files ?? [])]);
            // The same file may be chosen again after it was corrected.
            if (input.current !== null) input.current.value = '';
          }}
        />
      </label>
      <p className="quiet small">{words.columns}</p>
    </div>
  );
};
