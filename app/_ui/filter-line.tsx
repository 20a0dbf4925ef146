'use client';

import { useMessages } from '../_state/language-provider';
import { useFilter } from '../_state/use-filter';
import { useValueNames } from '../_state/use-value-names';
import styles from './filter-bar.module.css';

/** What the filter says, on paper. */
export const FilterLine = () => {
  const messages = useMessages();
  const words = messages.filter;
  const { filter } = useFilter();
  const nameOf = useValueNames();
  const { program, site, sex, ageFrom, ageTo } = filter;
  const people = [
    ...(program === undefined ? [] : [program]),
    ...(site === undefined ? [] : [site]),
    ...(sex === undefined ? [] : [words.sexes[sex]]),
    ...(ageFrom === undefined && ageTo === undefined ? [] : [words.ages({ from: ageFrom ?? null, to: ageTo ?? null })]),
  ];
  return (
    <p className={`print-only ${styles.line ?? ''}`}>
      {[
        nameOf(filter.measure),
        words.levelOption({ level: filter.level }),
        words.pairsOption[filter.comparable],
        ...(people.length === 0 ? [words.peopleAll] : people),
      ].join(' · ')}
    </p>
  );
};
