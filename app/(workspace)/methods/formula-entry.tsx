'use client';

import type { Formula } from '../../../lib/measures/formulas';
import { useMessages } from '../../_state/language-provider';
import { FactList } from '../../_ui/fact-list';
import { CalculatorPanel } from './calculator-panel';
import { CautionsList } from './cautions-list';
import { formulaUse } from './formula-use';
import { formulaUseWords } from './entry-words';
import { notationSigns } from './formula-signs';
import { NotationFormula } from './notation-formula';
import styles from './methods-screen.module.css';
import { useClinicMethods } from './use-clinic-methods';

/** A quantity that no visit is followed by: its formula, source and a calculator. */
export const FormulaEntry = ({ formula }: { readonly formula: Formula }) => {
  const messages = useMessages();
  const words = messages.methodsEntries;
  const { choices } = useClinicMethods();
  const { cautions, source } = formula;
  return (
    <>
      <div className={styles.columns}>
        <section className={styles.block} aria-labelledby="formula-title">
          <h2 id="formula-title">{words.formula}</h2>
          <NotationFormula
            sign={formula.sign}
            notation={formula.notation}
            signs={notationSigns(formula.notation, true, words.sign)}
          />
        </section>
        <CalculatorPanel
          name={formula.name}
          expression={formula.formula}
          unit={formula.unit}
          digits={formula.decimals}
        />
      </div>
      <section className={styles.block} aria-labelledby="facts-title">
        <h2 id="facts-title">{words.facts}</h2>
        <FactList
          facts={[
            [words.status, messages.methods.status[formula.verification]],
            [words.source, source === 'definition' ? '' : source],
            [words.cautions, cautions.length === 0 ? null : <CautionsList key="c" cautions={cautions} />],
            [words.usedHere, formulaUseWords(formulaUse(formula, choices), messages)],
          ]}
        />
      </section>
    </>
  );
};
