'use client';

import type { ReactNode } from 'react';
import type { SettingRow } from '../../../lib/cohort/types/comparability';
import { useMessages } from '../../_state/language-provider';
import { useFilter } from '../../_state/use-filter';
import { useNamedMeasure } from '../../_state/use-named-measure';
import { useSession } from '../../_state/workspace-provider';
import { Sentence } from '../../_ui/sentence';
import { BesideCounts } from '../../_ui/beside-counts';

interface ComparabilityHeadProps {
  readonly rows: readonly SettingRow[];
  readonly choice: ReactNode;
}

/** How many pairs the strict setting holds, and on which setting the screens open. */
export const ComparabilityHead = ({ rows, choice }: ComparabilityHeadProps) => {
  const words = useMessages().comparability;
  const { cohort, settings } = useSession();
  const { filter } = useFilter();
  const measure = useNamedMeasure(filter.measure);
  const strict = rows.find(({ setting }) => setting === 'strict');
  const opening = words.opens({ setting: cohort.summary.openingSetting, chosen: settings.comparable !== undefined });
  const guarded = words.guarded({ held: strict?.held ?? 0, stopped: strict?.stopped ?? 0 });
  return (
    <Sentence
      overline={words.title}
      detail={
        <>
          <p>{`${opening} ${guarded} ${words.notTransitive}`}</p>
          <BesideCounts />
        </>
      }
      actions={choice}
    >
      {words.finding({ value: measure.name, taking: strict?.nComparable ?? 0, all: strict?.nPairs ?? 0 })}
    </Sentence>
  );
};
