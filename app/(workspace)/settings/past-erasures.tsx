'use client';

import { useFormatters, useMessages } from '../../_state/language-provider';
import { useInstantWords } from '../../_state/use-instant-words';
import { useSession } from '../../_state/workspace-provider';
import styles from './settings-screen.module.css';

/** Erasures so far, without names, and the backups that may still hold the people. */
export const PastErasures = () => {
  const words = useMessages().settingsPrivacy.past;
  const formatters = useFormatters();
  const instant = useInstantWords();
  const { erasures } = useSession();
  return (
    <div className={styles.panel}>
      <h3>{words.title}</h3>
      {erasures.length === 0 ? (
        <p>{words.none}</p>
      ) : (
        <ul className={styles.points}>
          {erasures.map(({ at, initials, backups }) => (
            <li key={at}>
              <strong>{words.line({ when: instant.at(at), by: initials })}</strong>{' '}
              <bdi>{backups.length === 0 ? words.noBackups : words.backups({ names: formatters.list(backups) })}</bdi>
            </li>
          ))}
        </ul>
      )}
    </div>
  );
};
