'use client';

import { commonUnit, inCommonUnit } from '../../../lib/measures/in-common-unit';
import type { Equation } from '../../../lib/measures/equation';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { useCohortQuery } from '../../_state/use-cohort-query';
import { useSession } from '../../_state/workspace-provider';
import { CalculatorPanel } from './calculator-panel';
import { CautionsList } from './cautions-list';
import { CitationText } from './citation-text';
import { fitWords, groupWords, measuredWords } from './entry-words';
import { EquationFormula } from './equation-formula';
import { FactList } from '../../_ui/fact-list';
import { SwitchOn } from './switch-on';
import { useClinicMethods } from './use-clinic-methods';
import styles from './methods-screen.module.css';

/** One equation: formula, for whom, how well, how far checked, where it is used, and a calculator. */
export const EquationEntry = ({ equation }: { readonly equation: Equation }) => {
  const messages = useMessages();
  const words = messages.methodsEntries;
  const formatters = useFormatters();
  const { cohort } = useSession();
  const { choices } = useClinicMethods();
  const query = useCohortQuery('equation fits', (open, filter, signal) => open.equationFits(filter, signal));
  const inForce = choices.some(({ chosen }) => chosen?.id === equation.id);
  const fit =
    query.kind === 'ready' && inForce ? query.value.find((one) => one.equation.id === equation.id) : undefined;
  const behind = cohort.catalogue.measures
    .filter((measure) => measure.equation?.id === equation.id)
    .map(({ id }) => messages.measures[id].name);
  const used = inForce
    ? [
        words.usedInForce({ quantity: messages.methods.quantity[equation.quantity] }),
        ...(behind.length < 2 ? [] : [words.usedIn({ values: behind })]),
        ...(fit === undefined ? [] : [words.insideHere(fit)]),
      ].join(' ')
    : words.usedNowhere;
  const unit = commonUnit(equation);
  return (
    <>
      <div className={styles.columns}>
        <section className={styles.block} aria-labelledby="formula-title">
          <h2 id="formula-title">{words.formula}</h2>
          <EquationFormula equation={equation} />
        </section>
        <CalculatorPanel
          name={messages.methods.quantity[equation.quantity]}
          expression={inCommonUnit(equation)}
          unit={unit}
          digits={unit === 'kcal/d' ? 0 : 1}
          equation={equation}
        />
      </div>
      <section className={styles.block} aria-labelledby="facts-title">
        <h2 id="facts-title">{words.facts}</h2>
        <FactList
          facts={[
            [words.status, equation.verificationNote],
            [words.madeFor, groupWords(equation, messages, formatters)],
            [words.ancestry, equation.population.ancestry ?? words.ancestryNotSaid],
            [words.measured, measuredWords(equation, messages)],
            [words.referenceMethod, equation.referenceMethod],
            [words.fit, fitWords(equation, messages, formatters)],
            [
              words.cautions,
              equation.cautions.length === 0 ? null : <CautionsList key="c" cautions={equation.cautions} />,
            ],
            [words.source, <CitationText key="s" citation={equation.citation} />],
            [words.usedHere, used],
          ]}
        />
        {equation.verification === 'from-memory' ? <SwitchOn equation={equation} /> : null}
      </section>
    </>
  );
};
