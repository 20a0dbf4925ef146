'use client';

import { useMessages } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { useSession } from '../../_state/workspace-provider';
import { ActNote } from '../../_ui/act-note';
import { AnchoredSection } from '../../_ui/anchored-section';
import styles from './comparability-screen.module.css';
import { RulesForm } from './rules-form';

/** The rule table in words, to be edited; what conditions can be, and what no rule changes. */
export const RulesSection = () => {
  const words = useMessages().comparability.rules;
  const { settings } = useSession();
  const acting = useActing();
  return (
    <AnchoredSection id="rules" title={words.title} lead={words.lead} className="sheet">
      <RulesForm key={JSON.stringify(settings.rules)} acting={acting} />
      <ActNote acting={acting} />
      <div className={styles.note}>
        <p>{words.marks}</p>
        <p>{words.stops}</p>
      </div>
    </AnchoredSection>
  );
};
