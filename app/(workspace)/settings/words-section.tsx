'use client';

import type { Settings } from '../../../lib/cohort/settings';
import { useMessages } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { useSession } from '../../_state/workspace-provider';
import { ActNote } from '../../_ui/act-note';
import { SegmentedChoice } from '../../_ui/segmented-choice';
import { UnitChoices } from '../../_ui/unit-choices';
import styles from './settings-screen.module.css';
import { SettingsSection } from './settings-section';
import { WritingPart } from './writing-part';

const PEOPLE = ['client', 'patient', 'participant'] as const;
const LEVELS = [80, 90, 95] as const;

/** The clinic's word for people and its level of error; one person's units and date form. */
export const WordsSection = () => {
  const words = useMessages().settings.words;
  const { settings } = useSession();
  const acting = useActing();
  const save = (next: Settings): void => void acting.start((workspace) => workspace.saveSettings(next), words.saved);
  return (
    <SettingsSection id="words" lead={words.lead}>
      <WritingPart>
        <div className={styles.panel}>
          <h3>{words.clinic}</h3>
          <SegmentedChoice
            label={words.person}
            value={settings.words.client}
            options={PEOPLE.map((client) => ({ value: client, label: words.personWord[client] }))}
            onChange={(client) => {
              save({ ...settings, words: { ...settings.words, client } });
            }}
          />
          <SegmentedChoice
            label={words.level}
            value={String(settings.level)}
            options={LEVELS.map((level) => ({ value: String(level), label: words.levels[level] }))}
            onChange={(chosen) => {
              const level = LEVELS.find((known) => String(known) === chosen);
              if (level !== undefined) save({ ...settings, level });
            }}
          />
          <p className="quiet small">{words.levelNote}</p>
          <ActNote acting={acting} />
        </div>
      </WritingPart>
      <div className={`${styles.panel ?? ''} no-print`}>
        <h3>{words.mine}</h3>
        <div className={styles.fields}>
          <UnitChoices />
        </div>
        <p className="quiet small">{words.mineNote}</p>
      </div>
    </SettingsSection>
  );
};
