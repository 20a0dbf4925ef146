'use client';

import { useState } from 'react';
import type { PrecisionRow } from '../../../lib/cohort/types/precision-row';
import type { Measure } from '../../../lib/measures/measure';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { useFilter } from '../../_state/use-filter';
import { AnchoredSection } from '../../_ui/anchored-section';
import { LabelledInput } from '../../_ui/labelled-input';
import { plannedSentences, readPlan } from './planned-sentences';
import { StudySheet } from './study-sheet';
import styles from './repeatability-screen.module.css';

interface PlannerSectionProps {
  readonly row: PrecisionRow | undefined;
  readonly measure: Measure;
}

/** How large an error study must be, what it gives, what replicates buy, and the sheet to take along. */
export const PlannerSection = ({ row, measure }: PlannerSectionProps) => {
  const words = useMessages().studyPlanner;
  const formatters = useFormatters();
  const { filter } = useFilter();
  const [people, setPeople] = useState('30');
  const [visits, setVisits] = useState('2');
  const [readings, setReadings] = useState('1');
  const [shown, setShown] = useState(false);
  const plan = readPlan(people, visits, readings);
  return (
    <AnchoredSection id="planner" title={words.title} lead={words.lead} className="sheet" printed={shown}>
      <div className={`${styles.plan ?? ''} no-print`}>
        <LabelledInput label={words.people} type="text" inputMode="numeric" value={people} onChange={setPeople} />
        <LabelledInput label={words.visits} type="text" inputMode="numeric" value={visits} onChange={setVisits} />
        <LabelledInput label={words.readings} type="text" inputMode="numeric" value={readings} onChange={setReadings} />
      </div>
      <div role="status" className={styles.facts}>
        {plan === undefined ? (
          <p>{words.notNumbers}</p>
        ) : (
          plannedSentences(plan, { row, measure, level: filter.level, words, formatters }).map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))
        )}
      </div>
      <p className="quiet small">{words.source}</p>
      <div className="row no-print">
        <button
          type="button"
          className="button"
          aria-expanded={shown}
          disabled={plan === undefined}
          onClick={() => {
            setShown(!shown);
          }}
        >
          {shown ? words.hideSheet : words.makeSheet}
        </button>
        {shown ? (
          <button
            type="button"
            className="button"
            onClick={() => {
              window.print();
            }}
          >
            {words.print}
          </button>
        ) : null}
      </div>
      {shown && plan !== undefined ? <StudySheet plan={plan} /> : null}
    </AnchoredSection>
  );
};
