'use client';

import { parseAsStringLiteral, useQueryState } from 'nuqs';
import { useEffect } from 'react';
import { useMessages } from '../../_state/language-provider';
import { useCohortQuery } from '../../_state/use-cohort-query';
import { Answered } from '../../_ui/answered';
import { SegmentedChoice } from '../../_ui/segmented-choice';
import { ComparabilityHead } from './comparability-head';
import styles from './comparability-screen.module.css';
import { CoverageSection } from './coverage-section';
import { RulesSection } from './rules-section';
import { SettingsCompared } from './settings-compared';

const PURPOSES = ['baseline-latest', 'consecutive'] as const;
const parsePurpose = parseAsStringLiteral(PURPOSES).withDefault('baseline-latest');

/** Which visits may be compared: what each setting makes of the pairs, what the record holds, and the rules. */
export const ComparabilityScreen = () => {
  const { programs } = useMessages();
  const [purpose, setPurpose] = useQueryState('purpose', parsePurpose);
  const query = useCohortQuery(`compared settings ${purpose}`, (cohort, filter, signal) =>
    cohort.comparedSettings(filter, purpose, signal),
  );
  const choice = (
    <SegmentedChoice
      label={programs.purposeLabel}
      value={purpose}
      options={PURPOSES.map((value) => ({ value, label: programs.purpose[value] }))}
      onChange={(value) => void setPurpose(value)}
    />
  );
  useEffect(() => {
    // The sections are drawn after the address was followed.
    const name = window.location.hash.slice(1);
    if (name !== '') document.getElementById(name)?.scrollIntoView();
  }, []);
  return (
    <div className={styles.screen}>
      <Answered query={query}>
        {(rows) => (
          <>
            <ComparabilityHead rows={rows} choice={choice} />
            <SettingsCompared rows={rows} purpose={purpose} />
          </>
        )}
      </Answered>
      <CoverageSection />
      <RulesSection />
    </div>
  );
};
