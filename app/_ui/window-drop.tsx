'use client';

import { useEffect, useState } from 'react';
import { dropFiles } from '../_state/dropped-files';
import { givenByDrop } from '../_state/given-files';
import { useMessages } from '../_state/language-provider';
import { useOpenPath } from './use-open-path';
import styles from './window-drop.module.css';

const holdsFiles = (event: DragEvent): boolean => event.dataTransfer?.types.includes('Files') ?? false;

/** Files and folders dropped anywhere on the window lead to Import and are read there. */
export const WindowDrop = () => {
  const words = useMessages().importScreen;
  const openPath = useOpenPath();
  const [over, setOver] = useState(false);

  useEffect(() => {
    let depth = 0;
    const enter = (event: DragEvent): void => {
      if (!holdsFiles(event)) return;
      depth += 1;
      setOver(true);
    };
    const leave = (event: DragEvent): void => {
      if (!holdsFiles(event)) return;
      depth = Math.max(0, depth - 1);
      if (depth === 0) setOver(false);
    };
    const allow = (event: DragEvent): void => {
      if (holdsFiles(event)) event.preventDefault();
    };
    const drop = (event: DragEvent): void => {
      if (!holdsFiles(event)) return;
      event.preventDefault();
      depth = 0;
      setOver(false);
      if (event.dataTransfer === null) return;
      void givenByDrop(event.dataTransfer).then((files) => {
        if (files.length === 0) return;
        dropFiles(files);
        openPath('/import/');
      });
    };
    window.addEventListener('dragenter', enter);
    window.addEventListener('dragleave', leave);
    window.addEventListener('dragover', allow);
    window.addEventListener('drop', drop);
    return () => {
      window.removeEventListener('dragenter', enter);
      window.removeEventListener('dragleave', leave);
      window.removeEventListener('dragover', allow);
      window.removeEventListener('drop', drop);
    };
  }, [openPath]);

  if (!over) return null;
  return (
    <div className={styles.cover} role="status">
      <p className={styles.text}>{words.windowDrop}</p>
    </div>
  );
};
