'use client';

import { LEVELS, PAIR_SETTINGS } from '../_state/filter-params';
import { useMessages } from '../_state/language-provider';
import { useFilter } from '../_state/use-filter';
import { useValueNames } from '../_state/use-value-names';
import { useSession } from '../_state/workspace-provider';
import { AgeField } from './age-field';
import styles from './filter-bar.module.css';
import { LabelledSelect } from './labelled-select';

const ALL = '';

/** The filter of every screen: value, error level, which pairs take part, and which people. It lives in the address. */
export const FilterBar = () => {
  const messages = useMessages();
  const words = messages.filter;
  const { settings, cohort } = useSession();
  const { filter, set, showAllPeople, narrowed } = useFilter();
  const { summary } = cohort;
  const named = (names: readonly string[]) => [
    { value: ALL, label: words.all },
    ...names.map((name) => ({ value: name, label: name })),
  ];
  const nameOf = useValueNames();
  return (
    <form
      className={styles.bar}
      aria-label={words.title}
      onSubmit={(event) => {
        event.preventDefault();
      }}
    >
      <LabelledSelect
        label={words.value}
        value={filter.measure}
        options={cohort.listed.map((id) => ({ value: id, label: nameOf(id) }))}
        onChange={(value) => {
          set({ value: value === cohort.lean ? null : value });
        }}
      />
      <LabelledSelect
        label={words.level}
        value={String(filter.level)}
        options={LEVELS.map((level) => ({ value: String(level), label: words.levelOption({ level }) }))}
        onChange={(text) => {
          const level = LEVELS.find((known) => String(known) === text) ?? null;
          set({ level: level === settings.level ? null : level });
        }}
      />
      <LabelledSelect
        label={words.pairs}
        value={filter.comparable}
        options={PAIR_SETTINGS.map((pairs) => ({ value: pairs, label: words.pairsOption[pairs] }))}
        onChange={(pairs) => {
          const usual = settings.comparable ?? summary.openingSetting;
          set({ pairs: pairs === usual ? null : pairs });
        }}
      />
      <LabelledSelect
        label={words.program}
        value={filter.program ?? ALL}
        options={named(summary.programs.map(({ name }) => name))}
        onChange={(program) => {
          set({ program: program === ALL ? null : program });
        }}
      />
      <LabelledSelect
        label={words.site}
        value={filter.site ?? ALL}
        options={named(summary.sites)}
        onChange={(site) => {
          set({ site: site === ALL ? null : site });
        }}
      />
      <LabelledSelect
        label={words.sex}
        value={filter.sex ?? ALL}
        options={[
          { value: ALL, label: words.all },
          { value: 'F', label: words.sexes.F },
          { value: 'M', label: words.sexes.M },
        ]}
        onChange={(sex) => {
          set({ sex: sex === 'F' || sex === 'M' ? sex : null });
        }}
      />
      <div className={styles.ages}>
        <AgeField
          label={words.ageFrom}
          value={filter.ageFrom}
          onChange={(age) => {
            set({ from: age });
          }}
        />
        <AgeField
          label={words.ageTo}
          value={filter.ageTo}
          onChange={(age) => {
            set({ to: age });
          }}
        />
      </div>
      {narrowed ? (
        <button type="button" className={`button ${styles.reset ?? ''}`} onClick={showAllPeople}>
          {words.reset}
        </button>
      ) : null}
    </form>
  );
};
