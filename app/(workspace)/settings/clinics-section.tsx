'use client';

import { useMessages } from '../../_state/language-provider';
import { FilterLink } from '../../_ui/filter-link';
import { ClinicList } from './clinic-list';
import { DemoPanel } from './demo-panel';
import { RenameClinic } from './rename-clinic';
import styles from './settings-screen.module.css';
import { SettingsSection } from './settings-section';
import { WritingPart } from './writing-part';

/** The clinics of this browser: open, rename, begin, delete. */
export const ClinicsSection = () => {
  const words = useMessages().settings.clinics;
  return (
    <SettingsSection id="clinics" lead={words.lead}>
      <ClinicList />
      <WritingPart>
        <RenameClinic />
        <div className={styles.panel}>
          <h3>{words.newTitle}</h3>
          <p>{words.newLead}</p>
          <FilterLink className="button" href="/import/">
            {words.newLink}
          </FilterLink>
        </div>
        <DemoPanel />
      </WritingPart>
    </SettingsSection>
  );
};
