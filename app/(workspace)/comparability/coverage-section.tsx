'use client';

import { parseAsStringLiteral, useQueryState } from 'nuqs';
import { useState } from 'react';
import type { CoverageRow } from '../../../lib/cohort/types/comparability';
import type { RuleId } from '../../../lib/measures/comparability-rule';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { useCohortQuery } from '../../_state/use-cohort-query';
import { AnchoredSection } from '../../_ui/anchored-section';
import { Answered } from '../../_ui/answered';
import { FilterLink } from '../../_ui/filter-link';
import { LabelledSelect } from '../../_ui/labelled-select';
import { SegmentedChoice } from '../../_ui/segmented-choice';
import styles from './comparability-screen.module.css';
import { CoverageFigure } from './coverage-figure';
import { CountTable } from './count-table';
import { overGroups, STATES } from './over-groups';

const BY = ['site', 'operator', 'month'] as const;
const parseBy = parseAsStringLiteral(BY).withDefault('site');

/** What the record holds: every condition over all readings, and one of them by site, operator or month. */
export const CoverageSection = () => {
  const messages = useMessages();
  const words = messages.comparability.coverage;
  const formatters = useFormatters();
  const [by, setBy] = useQueryState('by', parseBy);
  const [rule, setRule] = useState<RuleId>('fasting');
  const query = useCohortQuery<readonly CoverageRow[]>(`coverage by ${by}`, (cohort, filter, signal) =>
    cohort.coverage(by, filter, signal),
  );
  const cells = (row: CoverageRow): readonly string[] => [
    formatters.number(row.readings),
    ...STATES.map((state) => (row[state] === 0 ? words.none : words.share({ n: row[state], all: row.readings }))),
  ];
  const columns = [words.readings, ...STATES.map((state) => words.states[state])];
  const groupName = (group: string | null): string => group ?? words.noGroup[by];
  return (
    <AnchoredSection id="record" title={words.title} lead={words.lead} className="sheet">
      <Answered part query={query}>
        {(rows) => {
          const whole = overGroups(rows);
          const [first] = whole;
          if (first === undefined) return <p>{words.nothing}</p>;
          return (
            <>
              <CoverageFigure rows={whole} />
              <CountTable
                caption={words.allCaption({ readings: first.readings })}
                columns={[words.condition, ...columns]}
                rows={whole.map((row) => [messages.reasons.condition[row.rule], ...cells(row)])}
              />
              <div className={`${styles.choices ?? ''} no-print`}>
                <LabelledSelect
                  label={words.condition}
                  value={rule}
                  options={whole.map((row) => ({ value: row.rule, label: messages.reasons.condition[row.rule] }))}
                  onChange={setRule}
                />
                <SegmentedChoice
                  label={words.by}
                  value={by}
                  options={BY.map((value) => ({ value, label: words.byOption[value] }))}
                  onChange={(value) => void setBy(value)}
                />
              </div>
              <CountTable
                caption={words.oneCaption({ condition: messages.reasons.condition[rule] })}
                columns={[words.group[by], ...columns]}
                rows={rows.filter((row) => row.rule === rule).map((row) => [groupName(row.group), ...cells(row)])}
              />
            </>
          );
        }}
      </Answered>
      <p className="no-print">
        <FilterLink href="/import/#procedure">{words.procedures}</FilterLink>
      </p>
    </AnchoredSection>
  );
};
