'use client';

import type { ReactNode } from 'react';
import { useMessages } from '../../_state/language-provider';
import { AnchoredSection } from '../../_ui/anchored-section';
import type { SectionId } from './sections';
import styles from './settings-screen.module.css';

interface SettingsSectionProps {
  readonly id: SectionId;
  readonly lead?: string;
  readonly children: ReactNode;
}

/** A section of Settings under its name. */
export const SettingsSection = (props: SettingsSectionProps) => (
  <AnchoredSection title={useMessages().settings.sections[props.id]} className={styles.section} {...props} />
);
