'use client';

import { useEffect } from 'react';
import { useMessages } from '../../_state/language-provider';
import { useSession } from '../../_state/workspace-provider';
import { Sentence } from '../../_ui/sentence';
import { ClinicsSection } from './clinics-section';
import { ComparabilitySection } from './comparability-section';
import { ExportsSection } from './exports-section';
import { KeepingSection } from './keeping-section';
import { LeanSection } from './lean-section';
import { LogSection } from './log-section';
import { PassphraseSection } from './passphrase-section';
import { PrivacySection } from './privacy-section';
import { ProgramsSection } from './programs-section';
import { SectionIndex } from './section-index';
import styles from './settings-screen.module.css';
import { WhoSection } from './who-section';
import { WordsSection } from './words-section';

/** How the clinic is kept: calm sections on one page. */
export const SettingsScreen = () => {
  const words = useMessages().settings;
  const { clinic } = useSession();
  useEffect(() => {
    // The sections are drawn after the address was followed.
    const name = window.location.hash.slice(1);
    if (name !== '') document.getElementById(name)?.scrollIntoView();
  }, []);
  return (
    <div className={styles.screen}>
      <Sentence overline={words.title} detail={words.lead}>
        <bdi>{words.headline({ clinic: clinic.name })}</bdi>
      </Sentence>
      <div className={styles.columns}>
        <SectionIndex />
        <div className={styles.sections}>
          <ClinicsSection />
          <WhoSection />
          <WordsSection />
          <ProgramsSection />
          <LeanSection />
          <ComparabilitySection />
          <KeepingSection />
          <PassphraseSection />
          <PrivacySection />
          <ExportsSection />
          <LogSection />
        </div>
      </div>
    </div>
  );
};
