'use client';

import { CUT_OFF_QUANTITIES } from '../../../lib/measures/cut-offs/cut-off';
import type { Measure } from '../../../lib/measures/measure';
import { useMessages } from '../../_state/language-provider';
import { useSession } from '../../_state/workspace-provider';
import { FactList } from '../../_ui/fact-list';
import { FilterLink } from '../../_ui/filter-link';
import { CalculatorPanel } from './calculator-panel';
import { EquationFormula } from './equation-formula';
import { inCentimetres, notationSigns } from './formula-signs';
import { NotationFormula } from './notation-formula';
import styles from './methods-screen.module.css';

const isEquationItself = (measure: Measure): boolean =>
  measure.equation !== undefined && measure.id === measure.equation.quantity;

const Formula = ({ measure }: { readonly measure: Measure }) => {
  const { measures, methodsEntries: words } = useMessages();
  if (isEquationItself(measure) && measure.equation !== undefined)
    return <EquationFormula equation={measure.equation} />;
  if (measure.recordedAs !== undefined) return <p>{measure.source}</p>;
  return (
    <NotationFormula
      sign={measures[measure.id].short}
      notation={measure.notation}
      signs={notationSigns(measure.notation, inCentimetres(measure.id), words.sign)}
    />
  );
};

/** One value: how it comes about, in which unit, from which equation, and a calculator. */
export const ValueEntry = ({ measure }: { readonly measure: Measure | undefined }) => {
  const messages = useMessages();
  const words = messages.methodsEntries;
  const { cohort } = useSession();
  if (measure === undefined)
    return (
      <p>
        {words.notFollowed} <FilterLink href="/methods/#in-force">{words.chooseEquation}</FilterLink>
      </p>
    );
  const follows = cohort.catalogue.follows(measure.id);
  const used = !follows
    ? measure.equation === undefined
      ? words.notSwitchedOn
      : words.notFollowed
    : measure.recordedAs !== undefined
      ? words.usedRecorded
      : measure.equation === undefined
        ? words.usedDefined
        : words.usedByValue({ equation: measure.equation.name });
  const { equation } = measure;
  const cutOffs = CUT_OFF_QUANTITIES.find((quantity) => quantity === measure.id);
  return (
    <>
      <div className={styles.columns}>
        <section className={styles.block} aria-labelledby="formula-title">
          <h2 id="formula-title">{words.formula}</h2>
          <Formula measure={measure} />
        </section>
        {measure.recordedAs === undefined || cutOffs !== undefined ? (
          <CalculatorPanel
            name={messages.measures[measure.id].name}
            expression={measure.formula}
            unit={measure.unit}
            digits={measure.decimals}
            {...(equation === undefined ? {} : { equation })}
            {...(cutOffs === undefined ? {} : { cutOffs })}
          />
        ) : null}
      </div>
      <section className={styles.block} aria-labelledby="facts-title">
        <h2 id="facts-title">{words.facts}</h2>
        <FactList
          facts={[
            [words.status, measure.recordedAs === undefined ? messages.methods.status[measure.verification] : ''],
            [words.source, measure.source === 'definition' ? '' : measure.source],
            [
              words.kinds.equation,
              equation === undefined ? null : (
                <FilterLink key="e" href={`/methods/?entry=${equation.id}`}>
                  {equation.name}
                </FilterLink>
              ),
            ],
            [words.usedHere, used],
          ]}
        />
      </section>
    </>
  );
};
