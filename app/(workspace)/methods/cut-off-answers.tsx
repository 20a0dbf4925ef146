'use client';

import { classify } from '../../../lib/measures/cut-offs/classify';
import type { CutOffQuantity } from '../../../lib/measures/cut-offs/cut-off';
import { cutOffsFor } from '../../../lib/measures/cut-offs/cut-offs-for';
import { offeredCutOffs } from '../../../lib/workspace/offered-methods';
import { cutOffName } from '../../_state/cut-off-name';
import { useMessages } from '../../_state/language-provider';
import { useSession } from '../../_state/workspace-provider';
import { FilterLink } from '../../_ui/filter-link';
import styles from './methods-screen.module.css';

interface CutOffAnswersProps {
  readonly quantity: CutOffQuantity;
  readonly value: number;
  readonly sex: 'F' | 'M' | undefined;
  readonly ageYears: number | undefined;
  readonly bmi: number | undefined;
  readonly equationId: string | undefined;
}

/** Where a calculated value lies by the cut-offs that may be used for it: right equation, sex and age, and offered here. */
export const CutOffAnswers = ({ quantity, value, sex, ageYears, bmi, equationId }: CutOffAnswersProps) => {
  const messages = useMessages();
  const words = messages.methodsEntries.calculator;
  const { settings } = useSession();
  if (sex === undefined || ageYears === undefined) return <p className="quiet small">{words.cutOffsNeed}</p>;
  const who = { sex, ageYears };
  const offered = offeredCutOffs(settings);
  const found = cutOffsFor({
    ...who,
    quantity,
    chosen: new Set(offered.map(({ id }) => id)),
    ...(bmi === undefined ? {} : { bmi }),
    ...(equationId === undefined ? {} : { equationId }),
  });
  if (found.length === 0) return <p className="quiet small">{words.noCutOffs}</p>;
  return (
    <>
      <h3>{words.cutOffs}</h3>
      <ul className={styles.cutOffs}>
        {found.map((cutOff) => (
          <li key={cutOff.id}>
            <FilterLink href={`/methods/?entry=cut-off-${cutOff.id}`}>
              {cutOffName(cutOff, messages.methods.mark)}
            </FilterLink>
            : {classify(cutOff, value, who)?.words ?? words.noInterval}
          </li>
        ))}
      </ul>
      <p className="quiet small">{words.cutOffsNote}</p>
    </>
  );
};
