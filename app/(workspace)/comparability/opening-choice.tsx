'use client';

import type { ComparableSetting } from '../../../lib/cohort/types/filter';
import { useMessages } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { useSession } from '../../_state/workspace-provider';
import { ActNote } from '../../_ui/act-note';
import { LabelledSelect } from '../../_ui/labelled-select';
import styles from './comparability-screen.module.css';

const OPTIONS = ['auto', 'strict', 'caution', 'all'] as const;

/** On which setting the screens open: the strictest that holds pairs, or one that the clinic chose. */
export const OpeningChoice = () => {
  const words = useMessages().comparability;
  const { settings, keeping } = useSession();
  const acting = useActing();
  const choose = (chosen: ComparableSetting | 'auto'): void => {
    const { comparable: _, ...others } = settings;
    void acting.start(
      (workspace) => workspace.saveSettings(chosen === 'auto' ? others : { ...others, comparable: chosen }),
      words.openingSaved,
    );
  };
  return (
    <fieldset className={`${styles.opening ?? ''} no-print`} disabled={!keeping.writer || acting.busy}>
      <LabelledSelect
        label={words.opening}
        value={settings.comparable ?? 'auto'}
        options={OPTIONS.map((value) => ({ value, label: words.openingOption[value] }))}
        onChange={choose}
      />
      <ActNote acting={acting} />
    </fieldset>
  );
};
