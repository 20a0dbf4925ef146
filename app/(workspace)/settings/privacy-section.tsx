'use client';

import { PastErasures } from './past-erasures';
import { PersonPanel } from './person-panel';
import { RetentionPanel } from './retention-panel';
import { SettingsSection } from './settings-section';

/** How long visits are kept, and what is done for one person. */
export const PrivacySection = () => (
  <SettingsSection id="privacy">
    <RetentionPanel />
    <PersonPanel />
    <PastErasures />
  </SettingsSection>
);
