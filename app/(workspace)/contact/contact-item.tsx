'use client';

import type { ReactNode } from 'react';
import type { StripPoint } from '../../../lib/cohort/types/contact-lists';
import type { ChangeRow } from '../../../lib/cohort/types/change-row';
import { FilterLink } from '../../_ui/filter-link';
import { ValueStrip } from '../../_ui/value-strip';
import { useSession } from '../../_state/workspace-provider';
import styles from './contact-item.module.css';

interface ContactItemProps {
  readonly clientKey: number;
  readonly client: string;
  /** Program and week. */
  readonly place: string;
  readonly change: ChangeRow | null;
  readonly strip: readonly StripPoint[];
  readonly children: ReactNode;
}

/** One client of a list: who, a small strip of the last values, and a paragraph. */
export const ContactItem = ({ clientKey, client, place, change, strip, children }: ContactItemProps) => {
  const { cohort } = useSession();
  return (
    <li className={styles.item}>
      <div className={styles.head}>
        <div className={styles.who}>
          <FilterLink className={styles.client} href={`/client/?c=${clientKey}`}>
            <bdi>{client}</bdi>
          </FilterLink>
          <span className="quiet small">
            <bdi>{place}</bdi>
          </span>
        </div>
        <ValueStrip
          measure={change?.measure === 'weight' ? 'weight' : cohort.lean}
          points={strip}
          baseline={change?.valueFrom}
          leastSignificantChange={change?.lsc ?? undefined}
        />
      </div>
      <div className={styles.paragraph}>{children}</div>
    </li>
  );
};
