'use client';

import { useState } from 'react';
import type { Ucum } from '../../../lib/core/units';
import type { Equation } from '../../../lib/measures/equation';
import { DEFAULT_CATALOGUE } from '../../../lib/measures/catalogue';
import type { CutOffQuantity } from '../../../lib/measures/cut-offs/cut-off';
import type { Expression } from '../../../lib/measures/expression';
import type { InputId } from '../../../lib/measures/input-id';
import { inputsForSex, inputsOf } from '../../../lib/measures/inputs-of';
import { useFormatters, useMessages, usePreferences } from '../../_state/language-provider';
import { UnitChoices } from '../../_ui/unit-choices';
import { calculate, typedNumber, type Typed } from './calculator';
import { CalculatorFields } from './calculator-fields';
import { CutOffAnswers } from './cut-off-answers';
import { EnergyFields } from './energy-fields';
import styles from './methods-screen.module.css';

const BODY_MASS_INDEX = DEFAULT_CATALOGUE.measure('bmi').formula;

interface CalculatorPanelProps {
  readonly name: string;
  readonly expression: Expression;
  readonly unit: Ucum;
  readonly digits: number;
  /** Whose group is looked at. */
  readonly equation?: Equation;
  /** The value's cut-offs are asked for with sex and age. */
  readonly cutOffs?: CutOffQuantity;
}

/** Inputs with their units and the result as they are typed. */
export const CalculatorPanel = ({ name, expression, unit, digits, equation, cutOffs }: CalculatorPanelProps) => {
  const words = useMessages().methodsEntries.calculator;
  const formatters = useFormatters();
  const { units } = usePreferences().preferences;
  const [typed, setTyped] = useState<Typed>({});
  const all = inputsOf(expression);
  const sex = typed.sex_male === '1' ? 'M' : typed.sex_male === '0' ? 'F' : undefined;
  const needed = sex === undefined || !all.includes('sex_male') ? all : inputsForSex(expression, sex);
  const found = calculate(expression, all, typed, units, equation);
  const missing = found.missing.filter((input) => needed.includes(input));
  const named = (inputs: typeof all): readonly string[] => inputs.map((input) => words.inputs[input]);
  const value = found.notNumbers.length > 0 ? undefined : found.value;
  const isEnergy = equation?.quantity === 'ree';
  const outsideWord = { age: words.outsideAge, sex: words.outsideSex, bmi: words.outsideBmi };
  return (
    <section className={`${styles.calculator ?? ''} no-print`} aria-labelledby="calculator-title">
      <h2 id="calculator-title">{words.title}</h2>
      <p className="quiet small">{words.lead}</p>
      <div className={styles.fields}>
        <CalculatorFields
          inputs={cutOffs === undefined ? all : [...new Set<InputId>([...all, 'sex_male', 'age_years'])]}
          typed={typed}
          onType={(field, text) => {
            setTyped({ ...typed, [field]: text });
          }}
        />
      </div>
      <p>
        <output className={styles.result} aria-live="polite">
          {words.result({
            name: isEnergy ? words.ree : name.charAt(0).toLocaleUpperCase(formatters.locale) + name.slice(1),
            value: value === undefined ? words.unknown : formatters.quantity(value, unit, digits),
          })}
        </output>
      </p>
      {found.notNumbers.length === 0 ? null : (
        <p role="alert">{words.notANumber({ inputs: named(found.notNumbers) })}</p>
      )}
      {missing.length === 0 ? null : <p className="quiet">{words.missing({ inputs: named(missing) })}</p>}
      {missing.length === 0 && found.notNumbers.length === 0 && value === undefined ? (
        <p>{words.undefinedHere}</p>
      ) : null}
      {value !== undefined && value < 0 ? <p>{words.outsideNegative}</p> : null}
      {found.outside.length === 0 ? null : (
        <p className={styles.note}>{words.outside({ what: found.outside.map((what) => outsideWord[what]) })}</p>
      )}
      {cutOffs === undefined || value === undefined ? null : (
        <CutOffAnswers
          quantity={cutOffs}
          value={value}
          sex={sex}
          ageYears={typedNumber(typed.age_years)}
          bmi={calculate(BODY_MASS_INDEX, inputsOf(BODY_MASS_INDEX), typed, units).value}
          equationId={equation?.id}
        />
      )}
      {isEnergy ? <EnergyFields resting={value} /> : null}
      <details>
        <summary>{words.units}</summary>
        <div className={styles.fields}>
          <UnitChoices />
        </div>
      </details>
    </section>
  );
};
