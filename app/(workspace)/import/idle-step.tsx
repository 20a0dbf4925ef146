'use client';

import { useEffect } from 'react';
import { useMessages } from '../../_state/language-provider';
import { Sentence } from '../../_ui/sentence';
import { ClinicImports } from './clinic-imports';
import { ClinicMappings } from './clinic-mappings';
import { ClinicSwitch } from './clinic-switch';
import { FileZone } from './file-zone';
import styles from './import-screen.module.css';
import { OpenClinicReview } from './open-clinic-review';
import { showQuestions } from './show-questions';
import type { Import } from './use-import';

/** Before any file: where to give one, and what the open clinic holds already. */
export const IdleStep = ({ process }: { readonly process: Import }) => {
  const words = useMessages().importScreen;
  useEffect(() => {
    if (window.location.hash === '#questions') showQuestions();
  }, []);
  return (
    <div className={styles.screen}>
      <Sentence detail={words.lead.idle}>{words.heading.idle}</Sentence>
      <FileZone onFiles={(files) => void process.start(files)} />
      <ClinicImports />
      <ClinicMappings />
      <ClinicSwitch />
      <OpenClinicReview />
    </div>
  );
};
