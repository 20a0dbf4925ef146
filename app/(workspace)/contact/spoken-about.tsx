'use client';

import type { TalkToState } from '../../../lib/workspace/contact-calls';
import { callKind } from '../../../lib/workspace/contact-calls';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { useInstantWords } from '../../_state/use-instant-words';
import { useSession } from '../../_state/workspace-provider';
import { ActNote } from '../../_ui/act-note';
import { FilterLink } from '../../_ui/filter-link';
import styles from './spoken-about.module.css';

/** Rows that rest: what came of each call, and the way back. */
export const SpokenAbout = ({ spoken }: Pick<TalkToState, 'spoken'>) => {
  const words = useMessages().contact;
  const formatters = useFormatters();
  const instant = useInstantWords();
  const acting = useActing();
  const { keeping } = useSession();
  if (spoken.length === 0) return null;
  return (
    <details className={styles.spoken} open>
      <summary>{words.spoken({ n: spoken.length })}</summary>
      <ul>
        {spoken.map(({ row, call }) => (
          <li key={row.clientKey}>
            <FilterLink href={`/client/?c=${row.clientKey}`}>
              <bdi>{row.client}</bdi>
            </FilterLink>
            <span>
              {words.spokenRow({
                outcome: words.outcomes[call.outcome],
                when: instant.at(call.at),
                initials: call.initials,
                visit: formatters.date(call.visit),
              })}
            </span>
            <button
              type="button"
              className="button no-print"
              aria-label={words.takeBackOf({ client: row.client })}
              disabled={acting.busy || !keeping.writer}
              onClick={() => {
                void acting.start((workspace) => workspace.writeMark(call.client, callKind(call.visit), ''));
              }}
            >
              {words.takeBack}
            </button>
          </li>
        ))}
      </ul>
      <ActNote acting={acting} />
    </details>
  );
};
