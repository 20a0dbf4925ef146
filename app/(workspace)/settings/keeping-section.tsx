'use client';

import { useMessages } from '../../_state/language-provider';
import { BackupPanel } from './backup-panel';
import { RestorePanel } from '../../_ui/restore-panel';
import styles from './settings-screen.module.css';
import { SettingsSection } from './settings-section';
import { SharedPanel } from './shared-panel';
import { StorageFacts } from './storage-facts';
import { WritingPart } from './writing-part';

/** Where the clinic lies, and how it is kept from being lost. */
export const KeepingSection = () => {
  const words = useMessages().settingsKeeping;
  return (
    <SettingsSection id="keeping" lead={words.where}>
      <StorageFacts />
      <BackupPanel />
      <WritingPart>
        <div className={styles.panel}>
          <h3>{words.restore.title}</h3>
          <RestorePanel />
        </div>
        <SharedPanel />
      </WritingPart>
    </SettingsSection>
  );
};
