'use client';

import { useState } from 'react';
import type { GivenFile } from '../../../lib/workspace/workspace';
import { givenFiles } from '../../_state/given-files';
import { useMessages } from '../../_state/language-provider';
import styles from './import-screen.module.css';

interface FileZoneProps {
  readonly onFiles: (files: readonly GivenFile[]) => void;
}

/** Where files or a folder are chosen; those dropped here, as anywhere on the window, are caught by the window. */
export const FileZone = ({ onFiles }: FileZoneProps) => {
  const words = useMessages().importScreen.zone;
  const [empty, setEmpty] = useState(false);
  const give = (input: HTMLInputElement): void => {
    const files = givenFiles([...(input.files ?? [])]);
    // The same file may be chosen again after it was corrected.
    input.value = '';
    setEmpty(files.length === 0);
    if (files.length > 0) onFiles(files);
  };
  return (
    <div className={`${styles.zone ?? ''} no-print`}>
      <p className={styles.zoneText}>{words.text}</p>
      <p className="quiet small">{words.or}</p>
      <div className={styles.buttons}>
        <label className={`button button-strong ${styles.chooser ?? ''}`}>
          {words.choose}
          <input
            type="file"
            multiple
            onChange={(event) => {
              give(event.target);
            }}
          />
        </label>
        <label className={`button ${styles.chooser ?? ''}`}>
          {words.chooseFolder}
          <input
            ref={(input) => {
              input?.setAttribute('webkitdirectory', '');
            }}
            type="file"
            multiple
            onChange={(event) => {
              give(event.target);
            }}
          />
        </label>
      </div>
      <p className="small" role="status">
        {empty ? words.nothing : ''}
      </p>
      <p className="quiet small">{words.formats}</p>
      <p className="quiet small">{words.columns}</p>
    </div>
  );
};
