'use client';

import type { ReactNode } from 'react';
import { useMessages } from '../../_state/language-provider';
import { AnchoredSection } from '../../_ui/anchored-section';
import styles from './methods-screen.module.css';
import type { SectionId } from './sections';

interface MethodsSectionProps {
  readonly id: SectionId;
  readonly lead?: string;
  readonly printed?: boolean;
  readonly children: ReactNode;
}

/** A section of Methods under its name. */
export const MethodsSection = (props: MethodsSectionProps) => (
  <AnchoredSection title={useMessages().methods.sections[props.id]} className={styles.section} {...props} />
);
