'use client';

import { useMessages } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { useSession } from '../../_state/workspace-provider';
import { ActNote } from '../../_ui/act-note';
import { FileField } from '../../_ui/file-field';
import { FilterLink } from '../../_ui/filter-link';
import { useSaveFile } from '../../_ui/use-save-file';
import { settingsFile, settingsFromFile } from '../../../lib/workspace/settings-file';
import styles from './settings-screen.module.css';
import { SettingsSection } from './settings-section';
import { WritingPart } from './writing-part';

/** The way to the rules of comparability, and the settings as a file. */
export const ComparabilitySection = () => {
  const messages = useMessages();
  const words = messages.comparability;
  const { settings } = useSession();
  const acting = useActing();
  const { saveMade } = useSaveFile();
  const save = async (): Promise<void> => {
    const blob = new Blob([settingsFile(settings)], { type: 'application/json' });
    if (await saveMade('settings', { name: 'settings.json', blob }, 0)) acting.say(words.file.saved);
  };
  const load = async (file: File | undefined): Promise<void> => {
    if (file === undefined) return;
    const text = await file.text();
    await acting.start(
      (workspace) => {
        const read = settingsFromFile(text, settings);
        return read.ok ? workspace.saveSettings(read.value) : Promise.resolve(read);
      },
      words.file.loaded({ name: file.name }),
    );
  };
  return (
    <SettingsSection id="comparability" lead={words.file.lead}>
      <p>
        <FilterLink href="/comparability/#rules">{words.link}</FilterLink>
      </p>
      <p>
        <FilterLink href="/repeatability/#choices">{messages.errorStudy.choices.link}</FilterLink>
      </p>
      <div className={`${styles.panel ?? ''} no-print`}>
        <h3>{words.file.title}</h3>
        <button type="button" className="button" onClick={() => void save()}>
          {words.file.save}
        </button>
        <WritingPart>
          <FileField label={words.file.load} disabled={acting.busy} onFile={(file) => void load(file)} />
        </WritingPart>
        <ActNote acting={acting} />
      </div>
    </SettingsSection>
  );
};
