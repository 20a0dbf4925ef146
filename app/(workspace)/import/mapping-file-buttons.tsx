'use client';

import { useId, useRef, useState } from 'react';
import type { AppError } from '../../../lib/core/app-error';
import { exportColumn } from '../../../lib/workspace/export-column';
import type { Mapping } from '../../../lib/import/mapping';
import { readMappingFile } from '../../../lib/workspace/mapping-file';
import { useMessages } from '../../_state/language-provider';
import styles from './import-screen.module.css';
import { useSaveMapping } from './use-save-mapping';

interface MappingFileButtonsProps {
  readonly mapping: Mapping;
  readonly header: readonly string[];
  /** Whether the table goes into the open clinic: only what leaves a clinic stands in its list of exports. */
  readonly listed: boolean;
  readonly onMapping: (mapping: Mapping) => void;
}

/** A mapping as a JSON file, to take along and to bring in. */
export const MappingFileButtons = ({ mapping, header, listed, onMapping }: MappingFileButtonsProps) => {
  const screen = useMessages().importScreen.mapping;
  const words = screen.file;
  const saveMapping = useSaveMapping();
  const personal = mapping.constants
    .filter(({ to, value }) => value.trim() !== '' && exportColumn(to)?.role === 'identity')
    .map(({ to }) => screen.name({ column: to }));
  const noteId = useId();
  const input = useRef<HTMLInputElement>(null);
  const [said, setSaid] = useState<string | undefined>(undefined);
  const [error, setError] = useState<AppError | undefined>(undefined);
  const load = async (file: File | undefined): Promise<void> => {
    if (input.current !== null) input.current.value = '';
    if (file === undefined) return;
    const loaded = readMappingFile(file.name, await file.text(), header);
    setError(loaded.ok ? undefined : loaded.error);
    setSaid(loaded.ok ? words.loaded({ name: file.name }) : undefined);
    if (loaded.ok) onMapping({ ...loaded.value, headerLine: mapping.headerLine });
  };
  return (
    <div className={styles.mappingFile}>
      <div className={styles.buttons}>
        <button
          type="button"
          className="button"
          aria-describedby={noteId}
          onClick={() => {
            saveMapping(mapping, listed);
          }}
        >
          {words.save}
        </button>
        <label className={`button ${styles.chooser ?? ''}`}>
          {words.load}
          <input
            ref={input}
            type="file"
            accept=".json,application/json"
            onChange={(event) => void load(event.target.files?.[0])}
          />
        </label>
      </div>
      <p id={noteId} className="quiet small">
        {words.note} {personal.length === 0 ? null : <strong>{words.personal({ names: personal })}</strong>}
      </p>
      <p role="status" className="small">
        {said}
      </p>
      {error === undefined ? null : (
        <div role="alert" className={styles.wrong}>
          <p className="strong">{error.message}</p>
          <p>{error.remedy}</p>
        </div>
      )}
    </div>
  );
};
