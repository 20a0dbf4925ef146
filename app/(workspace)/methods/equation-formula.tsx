'use client';

import type { Branch, Equation } from '../../../lib/measures/equation';
import { equationNotation } from '../../../lib/measures/equation-notation';
import { useMessages } from '../../_state/language-provider';
import { equationSigns } from './formula-signs';
import { equationTree } from './formula-tree';
import { MathFormula } from './math-formula';
import styles from './methods-screen.module.css';
import { SignList } from './sign-list';

const useForWhom = (): ((branch: Branch) => string) => {
  const { forWhom: words } = useMessages().methodsEntries;
  return ({ sex, ageFrom, ageBelow }) => {
    const age =
      ageFrom === undefined
        ? ageBelow === undefined
          ? []
          : [words.under({ to: ageBelow })]
        : [ageBelow === undefined ? words.from({ from: ageFrom }) : words.between({ from: ageFrom, to: ageBelow })];
    return [...(sex === undefined ? [] : [words.sex[sex]]), ...age].join(', ');
  };
};

/** An equation as mathematics, one form under the other with whom each is for; as plain text; and its signs. */
export const EquationFormula = ({ equation }: { readonly equation: Equation }) => {
  const words = useMessages().methodsEntries;
  const forWhom = useForWhom();
  return (
    <>
      <ul className={styles.branches}>
        {equation.branches.map((branch, place) => {
          const who = forWhom(branch);
          return (
            <li key={`${who} ${String(place)}`}>
              {who === '' ? null : <p className="quiet small">{who}</p>}
              <MathFormula tree={equationTree(equation, branch)} />
            </li>
          );
        })}
      </ul>
      <details className="no-print">
        <summary>{words.plain}</summary>
        <p className={styles.plain}>{`${equation.quantity.toUpperCase()} = ${equationNotation(equation)}`}</p>
      </details>
      <SignList signs={equationSigns(equation, words.sign)} result={equation} />
    </>
  );
};
