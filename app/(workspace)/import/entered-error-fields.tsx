'use client';

import { MEASURE_IDS } from '../../../lib/measures/measure-id';
import { MEASURE_FACTS } from '../../../lib/measures/measure-facts';
import { useMessages } from '../../_state/language-provider';
import { useValueWords } from '../../_state/use-value-words';
import { LabelledInput } from '../../_ui/labelled-input';
import { LabelledSelect } from '../../_ui/labelled-select';
import type { EnteredLine } from './entered-errors';
import styles from './import-screen.module.css';

interface EnteredErrorFieldsProps {
  readonly lines: readonly EnteredLine[];
  readonly onLines: (lines: readonly EnteredLine[]) => void;
}

/** An SD between days and its degrees of freedom, for one value after the other; in the unit of the files. */
export const EnteredErrorFields = ({ lines, onLines }: EnteredErrorFieldsProps) => {
  const words = useMessages().importScreen.errorSource;
  const valueWords = useValueWords();
  const change = (index: number, part: Partial<EnteredLine>): void => {
    onLines(lines.map((line, place) => (place === index ? { ...line, ...part } : line)));
  };
  const next = MEASURE_IDS.find((id) => !lines.some(({ measure }) => measure === id));
  return (
    <div className={styles.entered}>
      {lines.map(({ measure, sd, df }, index) => {
        const { unit } = MEASURE_FACTS[measure];
        return (
          <div key={index} className={styles.fields}>
            <LabelledSelect
              label={words.measure}
              value={measure}
              options={MEASURE_IDS.map((id) => ({ value: id, label: valueWords(id).title }))}
              onChange={(value) => {
                change(index, { measure: value });
              }}
            />
            <LabelledInput
              label={words.sd({ unit: unit === '1' ? '' : unit })}
              type="text"
              value={sd}
              maxLength={12}
              onChange={(text) => {
                change(index, { sd: text });
              }}
            />
            <LabelledInput
              label={words.df}
              type="text"
              value={df}
              maxLength={6}
              onChange={(text) => {
                change(index, { df: text });
              }}
            />
            {lines.length < 2 ? null : (
              <button
                type="button"
                className="button"
                aria-label={words.removeOf({ value: valueWords(measure).title })}
                onClick={() => {
                  onLines(lines.filter((_, place) => place !== index));
                }}
              >
                {words.remove}
              </button>
            )}
          </div>
        );
      })}
      {next === undefined ? null : (
        <div>
          <button
            type="button"
            className="button"
            onClick={() => {
              onLines([...lines, { measure: next, sd: '', df: '' }]);
            }}
          >
            {words.add}
          </button>
        </div>
      )}
    </div>
  );
};
