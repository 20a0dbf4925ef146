'use client';

import { parseAsStringLiteral, useQueryState } from 'nuqs';
import { useMessages } from '../../_state/language-provider';
import { useSession } from '../../_state/workspace-provider';
import { FilterLink } from '../../_ui/filter-link';
import { SegmentedChoice } from '../../_ui/segmented-choice';
import { Sentence } from '../../_ui/sentence';
import styles from './checklist.module.css';
import { RoomChecklist } from './room-checklist';

const SHOWS = ['standing', 'lying', 'both'] as const;

/** The checklists that hang in the room; at first the one of the posture that the clinic measures in. */
export const ChecklistScreen = () => {
  const { checklist: words } = useMessages();
  const { posture } = useSession().cohort.summary;
  const [chosen, choose] = useQueryState('show', parseAsStringLiteral(SHOWS));
  const shown = chosen ?? (posture === 'standing' || posture === 'lying' ? posture : 'both');
  const postures = shown === 'both' ? (['standing', 'lying'] as const) : [shown];
  return (
    <>
      <div className="no-print">
        <Sentence overline={words.title} detail={<p>{words.lead}</p>}>
          {words.headline}
        </Sentence>
      </div>
      <div className={styles.tools}>
        <SegmentedChoice
          label={words.show}
          value={shown}
          options={SHOWS.map((value) => ({ value, label: words.shows[value] }))}
          onChange={(value) => void choose(value)}
        />
        <button
          type="button"
          className="button button-strong"
          onClick={() => {
            window.print();
          }}
        >
          {words.print}
        </button>
        <FilterLink className="button" href="/visit-sheet/">
          {words.toSheet}
        </FilterLink>
      </div>
      {postures.map((one) => (
        <RoomChecklist key={one} posture={one} />
      ))}
    </>
  );
};
