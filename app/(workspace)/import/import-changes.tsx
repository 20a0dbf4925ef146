'use client';

import type { ImportDifference } from '../../../lib/workspace/workspace';
import { useMessages } from '../../_state/language-provider';
import { FilterLink } from '../../_ui/filter-link';
import styles from './import-screen.module.css';

/** What the import changed beside what stood before: counts, and who is newly to talk to. */
export const ImportChanges = ({ difference }: { readonly difference: ImportDifference }) => {
  const words = useMessages().importScreen.done;
  const { visits, newClients, changedResults, toTalkTo, newToTalkTo } = difference;
  return (
    <section className="sheet stack" aria-labelledby="import-changes">
      <h2 id="import-changes">{words.changedTitle}</h2>
      <ul className={styles.list}>
        <li>{words.visits({ n: visits })}</li>
        <li>{words.newClients({ n: newClients })}</li>
        <li>{words.changedResults({ n: changedResults })}</li>
        <li>{words.toTalkTo({ n: toTalkTo })}</li>
      </ul>
      {newToTalkTo.length === 0 ? (
        <p>{words.nothingNew}</p>
      ) : (
        <div>
          <h3>{words.newToTalkTo}</h3>
          <ul className={styles.list}>
            {newToTalkTo.map(({ clientKey, client }) => (
              <li key={clientKey}>
                <FilterLink href={`/client/?c=${String(clientKey)}`}>
                  <bdi>{client}</bdi>
                </FilterLink>
              </li>
            ))}
          </ul>
        </div>
      )}
    </section>
  );
};
