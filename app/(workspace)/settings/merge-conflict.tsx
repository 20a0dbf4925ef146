'use client';

import { useId } from 'react';
import type { MergePreview } from '../../../lib/workspace/workspace';
import { useMessages } from '../../_state/language-provider';
import styles from './settings-screen.module.css';

export type Side = 'mine' | 'theirs';

/** A place by its path: the name of its kind, the nearest that there is. */
const placeOf = (path: string, places: Readonly<Record<string, string>>): string => {
  const [first = '', second = '', third = ''] = path.split('.');
  return places[`${first}.${second}.${third}`] ?? places[`${first}.${second}`] ?? places[first] ?? first;
};

interface MergeConflictProps {
  readonly conflict: MergePreview['conflicts'][number];
  readonly chosen: Side | undefined;
  readonly onChoose: (side: Side) => void;
}

/** One place that both sides changed: mine, theirs, and what stood there before. */
export const MergeConflict = ({ conflict, chosen, onChoose }: MergeConflictProps) => {
  const words = useMessages().settingsKeeping.shared;
  const name = useId();
  const text = (value: string): string => (value === '' ? words.empty : value);
  return (
    <fieldset className={styles.conflict}>
      <legend>{placeOf(conflict.path, words.places)}</legend>
      <p className="quiet small">
        <bdi>{words.base({ text: text(conflict.base) })}</bdi>
      </p>
      {(['mine', 'theirs'] as const).map((side) => (
        <label key={side} className={styles.check}>
          <input
            type="radio"
            name={name}
            checked={chosen === side}
            onChange={() => {
              onChoose(side);
            }}
          />
          <span>
            {words[side]}: <bdi>{text(conflict[side])}</bdi>
          </span>
        </label>
      ))}
    </fieldset>
  );
};
