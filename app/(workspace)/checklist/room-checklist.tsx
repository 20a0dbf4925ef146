'use client';

import { useId } from 'react';
import { useMessages } from '../../_state/language-provider';
import { useSession } from '../../_state/workspace-provider';
import styles from './checklist.module.css';
import { ruleHours } from './rule-hours';

const Part = ({ title, points }: { readonly title: string; readonly points: readonly string[] }) => (
  <div className={styles.part}>
    <h3>{title}</h3>
    <ul>
      {points.map((point) => (
        <li key={point}>{point}</li>
      ))}
    </ul>
  </div>
);

/** What is asked, prepared and written down before a reading, for one posture: one printed page. Hours are those of the clinic's rules. */
export const RoomChecklist = ({ posture }: { readonly posture: 'standing' | 'lying' }) => {
  const { checklist: words } = useMessages();
  const { settings } = useSession();
  const id = useId();
  const conditions = words.conditions({
    fasting: ruleHours(settings, 'fasting'),
    exercise: ruleHours(settings, 'exercise'),
    alcohol: ruleHours(settings, 'alcohol'),
  });
  return (
    <section className={`sheet ${styles.sheet ?? ''}`} aria-labelledby={id}>
      <h2 id={id}>{words.heading[posture]}</h2>
      <Part title={words.parts.ask} points={words.ask} />
      <Part title={words.parts.conditions} points={conditions} />
      <Part title={words.parts.position} points={words.position[posture]} />
      <Part title={words.parts.write} points={words.write} />
      <Part title={words.parts.caution} points={words.caution} />
      <p className="quiet small">{words.source}</p>
    </section>
  );
};
