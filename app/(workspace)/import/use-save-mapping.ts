'use client';

import { useCallback } from 'react';
import type { Mapping } from '../../../lib/import/mapping';
import { mappingFile } from '../../../lib/workspace/mapping-file';
import { saveFile } from '../../_ui/save-file';
import { useSaveFile } from '../../_ui/use-save-file';

/** Hands a mapping to the person as a file; one of the open clinic is entered in its list of exports. */
export const useSaveMapping = (): ((mapping: Mapping, listed: boolean) => void) => {
  const { saveMade } = useSaveFile();
  return useCallback(
    (mapping, listed) => {
      const file = mappingFile(mapping);
      if (!listed) saveFile(file);
      else void saveMade('mapping', { name: file.name, blob: new Blob([file.text], { type: file.mediaType }) }, 0);
    },
    [saveMade],
  );
};
