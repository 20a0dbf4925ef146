'use client';

import { useEffect } from 'react';
import { useMessages } from '../../_state/language-provider';
import { useCohortQuery } from '../../_state/use-cohort-query';
import { useSession } from '../../_state/workspace-provider';
import { Answered } from '../../_ui/answered';
import { Sentence } from '../../_ui/sentence';
import { AgreementSection } from './agreement-section';
import { CompareSection } from './compare-section';
import { EntriesSection } from './entries-section';
import { InForceSection } from './in-force-section';
import { methodsFinding } from './methods-finding';
import styles from './methods-screen.module.css';
import { OwnSection } from './own-section';
import { ParagraphSection } from './paragraph-section';
import { SectionIndex } from './section-index';
import { useClinicMethods } from './use-clinic-methods';

/** The whole of Methods on one page. */
export const MethodsOverview = () => {
  const words = useMessages().methods;
  const { cohort } = useSession();
  const { equations, choices } = useClinicMethods();
  const query = useCohortQuery('equation fits', (open, filter, signal) => open.equationFits(filter, signal));
  const ready = query.kind === 'ready';
  useEffect(() => {
    // The sections are drawn after the address was followed.
    const name = window.location.hash.slice(1);
    if (ready && name !== '') document.getElementById(name)?.scrollIntoView();
  }, [ready]);
  const computed = choices.filter(({ chosen }) => chosen !== null).length;
  return (
    <Answered query={query}>
      {(fits) => (
        <div className={styles.screen}>
          <Sentence
            overline={words.title}
            detail={
              cohort.summary.hasImpedance ? words.lead({ equations: equations.length, computed }) : words.needs.body
            }
          >
            {methodsFinding(fits, words)}
          </Sentence>
          <SectionIndex />
          <InForceSection fits={fits} />
          <EntriesSection />
          <AgreementSection />
          <CompareSection />
          <OwnSection />
          <ParagraphSection />
        </div>
      )}
    </Answered>
  );
};
