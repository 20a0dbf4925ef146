'use client';

import { useState } from 'react';
import type { MergePreview } from '../../../lib/workspace/workspace';
import { useMessages } from '../../_state/language-provider';
import { useInstantWords } from '../../_state/use-instant-words';
import { FactList } from '../../_ui/fact-list';
import { MergeConflict, type Side } from './merge-conflict';
import styles from './settings-screen.module.css';

interface MergeReviewProps {
  readonly preview: MergePreview;
  readonly busy: boolean;
  readonly onMerge: (choices: Readonly<Record<string, Side>>) => void;
  readonly onLeave: () => void;
}

/** What a merge would bring in and send out, and the places where one side has to be chosen. */
export const MergeReview = ({ preview, busy, onMerge, onLeave }: MergeReviewProps) => {
  const words = useMessages().settingsKeeping.shared;
  const instant = useInstantWords();
  const [choices, setChoices] = useState<Readonly<Record<string, Side>>>({});
  const counts = (of: Readonly<Record<string, number>>): string => {
    const said = Object.entries(of)
      .filter(([, n]) => n > 0)
      .map(([kind, n]) => words.kinds[kind]?.(n) ?? words.otherKind({ kind, n }));
    return said.length === 0 ? words.nothing : said.join(', ');
  };
  const left = preview.conflicts.filter(({ path }) => choices[path] === undefined).length;
  return (
    <div className={`sheet stack ${styles.wide ?? ''}`}>
      <p className="serif">
        <bdi>{words.lastWriter({ by: preview.lastWriter, when: instant.at(preview.writtenAt) })}</bdi>
      </p>
      <FactList
        facts={[
          [words.incoming, counts(preview.incoming)],
          [words.outgoing, counts(preview.outgoing)],
        ]}
      />
      {preview.conflicts.length === 0 ? null : (
        <>
          <p>{words.conflicts({ n: preview.conflicts.length })}</p>
          {preview.conflicts.map((conflict) => (
            <MergeConflict
              key={conflict.path}
              conflict={conflict}
              chosen={choices[conflict.path]}
              onChoose={(side) => {
                setChoices({ ...choices, [conflict.path]: side });
              }}
            />
          ))}
        </>
      )}
      <div className="row">
        <button
          type="button"
          className="button button-strong"
          disabled={busy || left > 0}
          onClick={() => {
            onMerge(choices);
          }}
        >
          {words.merge}
        </button>
        <button type="button" className="button" disabled={busy} onClick={onLeave}>
          {words.leave}
        </button>
        {left === 0 ? null : <span className="quiet small">{words.chooseAll({ left })}</span>}
      </div>
    </div>
  );
};
