'use client';

import { useMessages } from '../../_state/language-provider';
import { LabelledSelect } from '../../_ui/labelled-select';
import type { OwnDraft, OwnField as OwnFieldName } from './own-draft';
import { OwnField } from './own-field';
import styles from './methods-screen.module.css';

interface OwnSourceProps {
  readonly draft: OwnDraft;
  readonly problems: ReadonlySet<OwnFieldName>;
  readonly set: (patch: Partial<OwnDraft>) => void;
}

type TextKey =
  | 'description'
  | 'n'
  | 'ageFrom'
  | 'ageTo'
  | 'bmiFrom'
  | 'bmiTo'
  | 'path'
  | 'frequency'
  | 'referenceMethod'
  | 'see'
  | 'authors'
  | 'title'
  | 'journal'
  | 'year'
  | 'doi';

const PROBLEM: Readonly<Partial<Record<TextKey, OwnFieldName>>> = {
  description: 'description',
  n: 'n',
  ageFrom: 'ages',
  ageTo: 'ages',
  bmiFrom: 'bmi',
  bmiTo: 'bmi',
  path: 'path',
  frequency: 'frequency',
  referenceMethod: 'referenceMethod',
  see: 'see',
  authors: 'authors',
  journal: 'journal',
  year: 'year',
};

/** For whom an own equation was made, how it was measured, and where it comes from. */
export const OwnSource = ({ draft, problems, set }: OwnSourceProps) => {
  const words = useMessages().methodsOwn;
  const field = (key: TextKey, size?: 'short' | 'long', hint?: string) => {
    const problem = PROBLEM[key];
    return (
      <OwnField
        label={words[key]}
        value={draft[key]}
        problems={problems}
        onChange={(text) => {
          set({ [key]: text });
        }}
        {...(problem === undefined ? {} : { field: problem })}
        {...(size === undefined ? {} : { size })}
        {...(hint === undefined ? {} : { hint })}
      />
    );
  };
  return (
    <>
      <fieldset className={styles.group}>
        <legend>{words.groups.who}</legend>
        {field('description', 'long')}
        {field('n', 'short')}
        {field('ageFrom', 'short')}
        {field('ageTo', 'short')}
        {field('bmiFrom', 'short')}
        {field('bmiTo', 'short')}
        <LabelledSelect
          label={words.sex}
          value={draft.sex}
          options={(['both', 'F', 'M'] as const).map((value) => ({ value, label: words.sexes[value] }))}
          onChange={(sex) => {
            set({ sex });
          }}
        />
        {field('path', undefined, words.pathHint)}
        <LabelledSelect
          label={words.posture}
          value={draft.posture}
          options={(['none', 'lying', 'standing'] as const).map((value) => ({ value, label: words.postures[value] }))}
          onChange={(posture) => {
            set({ posture });
          }}
        />
        {field('frequency', 'short')}
        {field('referenceMethod')}
        {field('see', 'short')}
      </fieldset>
      <fieldset className={styles.group}>
        <legend>{words.groups.source}</legend>
        {field('authors', 'long')}
        {field('title', 'long')}
        {field('journal')}
        {field('year', 'short')}
        {field('doi')}
      </fieldset>
    </>
  );
};
