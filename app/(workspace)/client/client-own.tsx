'use client';

import { useId } from 'react';
import type { ClientDetail } from '../../../lib/cohort/types/client-detail';
import { useMessages } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { useSession } from '../../_state/workspace-provider';
import { ActNote } from '../../_ui/act-note';
import { Check } from '../../_ui/check';
import styles from './client-own.module.css';
import { MarkField } from './mark-field';
import { SexCoding } from './sex-coding';
import { useClientMarks } from './use-client-marks';

const LONGEST = { goal: 160, name: 80, alsoKnownAs: 160 };

/** The goal, names, the switch for what the client sees, and the sex coding. */
export const ClientOwn = ({ detail }: { readonly detail: ClientDetail }) => {
  const words = useMessages().clientOwn;
  const acting = useActing();
  const { keeping } = useSession();
  const titleId = useId();
  const { client } = detail;
  const marks = useClientMarks(client);
  const kept = (kind: keyof typeof marks): string => marks[kind]?.value ?? '';
  const hidden = kept('no-weight-or-fat') === 'y';
  const field = (kind: 'goal' | 'display-name' | 'also-known-as', label: string, maxLength: number, hint?: string) => (
    <MarkField
      key={`${kind} ${kept(kind)}`}
      client={client}
      kind={kind}
      kept={kept(kind)}
      label={label}
      maxLength={maxLength}
      acting={acting}
      {...(hint === undefined ? {} : { hint })}
    />
  );
  return (
    <section className={`sheet ${styles.part ?? ''}`} aria-labelledby={titleId}>
      <h2 id={titleId}>{words.title}</h2>
      <p className="quiet small">{words.lead}</p>
      {field('goal', words.goal, LONGEST.goal, words.goalHint)}
      {field('display-name', words.displayName, LONGEST.name)}
      {field('also-known-as', words.alsoKnownAs, LONGEST.alsoKnownAs)}
      <fieldset className={styles.plain} disabled={acting.busy || !keeping.writer}>
        <Check
          label={words.noWeight}
          checked={hidden}
          onChange={(checked) => {
            void acting.start(
              (workspace) => workspace.writeMark(client, 'no-weight-or-fat', checked ? 'y' : ''),
              checked ? words.noWeightOn : words.noWeightOff,
            );
          }}
        />
      </fieldset>
      <SexCoding detail={detail} acting={acting} />
      <ActNote acting={acting} />
    </section>
  );
};
