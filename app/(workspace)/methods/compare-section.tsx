'use client';

import { parseAsStringLiteral, useQueryState } from 'nuqs';
import { useMemo, useState } from 'react';
import type { EquationComparison } from '../../../lib/cohort/types/methods';
import { describeDifferenceSpread, tableDifferenceSpread } from '../../../lib/figures/difference-spread/describe';
import { drawDifferenceSpread } from '../../../lib/figures/difference-spread/draw';
import { buildDifferenceSpread } from '../../../lib/figures/difference-spread/spec';
import { QUANTITIES, type Equation } from '../../../lib/measures/equation';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { useCohortQuery } from '../../_state/use-cohort-query';
import { Check } from '../../_ui/check';
import { DataTable } from '../../_ui/data-table';
import { FigureFrame } from '../../_ui/figure-frame';
import { LabelledSelect } from '../../_ui/labelled-select';
import { Empty } from '../../_ui/states';
import { useFigureContext } from '../../_ui/use-figure-context';
import { useOpenPath } from '../../_ui/use-open-path';
import { compareColumns, comparedWith, compareFigure, compareFinding, hasForChildren, othersOf } from './compare-view';
import { MethodsSection } from './methods-section';
import styles from './methods-screen.module.css';
import { SectionAnswer } from './section-answer';
import { useClinicMethods } from './use-clinic-methods';

const Comparison = ({ comparison }: { readonly comparison: EquationComparison }) => {
  const words = useMessages().methods;
  const formatters = useFormatters();
  const openPath = useOpenPath();
  const context = useFigureContext({ width: 1000 });
  const { against, differences } = comparison;
  const spec = useMemo(
    () => buildDifferenceSpread(compareFigure(comparison, words.compare), context),
    [comparison, words, context],
  );
  const columns = useMemo(() => compareColumns(against, words), [against, words]);
  const quantity = words.quantity[against.quantity];
  if (differences.length === 0) return <Empty title={words.compare.noValues} />;
  return (
    <>
      <p className={styles.finding}>{compareFinding(comparison, words, formatters)}</p>
      <div className="sheet">
        <FigureFrame
          frame={{
            title: words.compare.figureTitle({
              quantity: quantity.charAt(0).toLocaleUpperCase(formatters.locale) + quantity.slice(1),
              against: against.name,
            }),
            subtitle: words.compare.figureSubtitle,
            caption: words.compare.caption,
          }}
          draw={(theme) => drawDifferenceSpread(spec, theme)}
          alternative={describeDifferenceSpread(spec, context.words)}
          table={tableDifferenceSpread(spec, context.words)}
          fileName={words.compare.fileName}
          headingLevel={3}
          onOpenPoint={(key) => {
            openPath(`/methods/?entry=${key}`);
          }}
        />
      </div>
      <div className="sheet">
        <DataTable
          caption={words.compare.table}
          rows={differences}
          columns={columns}
          rowKey={({ equation }) => equation.id}
          href={({ equation }) => `/methods/?entry=${equation.id}`}
          fileName={`${words.compare.fileName}-${against.quantity}`}
          rowsWord={words.compare.rowsWord({ n: differences.length })}
        />
      </div>
    </>
  );
};

interface ComparedProps {
  readonly against: Equation;
  readonly others: readonly Equation[];
}

const Compared = ({ against, others }: ComparedProps) => {
  const key = [against, ...others].map(({ id, version }) => `${id}.${String(version)}`).join(' ');
  const query = useCohortQuery(`compare ${key}`, (open, filter, signal) =>
    open.compareEquations({ against, others }, filter, signal),
  );
  return <SectionAnswer query={query}>{(comparison) => <Comparison comparison={comparison} />}</SectionAnswer>;
};

/** Other equations of a quantity against the one in force, on the loaded people. */
export const CompareSection = () => {
  const { compare: words, quantity: named } = useMessages().methods;
  const { choices, methods } = useClinicMethods();
  const [quantity, setQuantity] = useQueryState('compare', parseAsStringLiteral(QUANTITIES).withDefault('ffm'));
  const [allFromMemory, setAllFromMemory] = useState(false);
  const [forChildren, setForChildren] = useState(false);
  const choice = choices.find((one) => one.quantity === quantity);
  const against = choice === undefined ? undefined : comparedWith(choice);
  const others = choice === undefined ? [] : othersOf(choice, methods.switchedOn, { allFromMemory, forChildren });
  return (
    <MethodsSection id="compare" lead={words.lead}>
      <div className={`${styles.fields ?? ''} no-print`}>
        <LabelledSelect
          label={words.quantity}
          value={quantity}
          options={QUANTITIES.map((value) => ({ value, label: named[value] }))}
          onChange={(value) => void setQuantity(value)}
        />
        <Check label={words.fromMemory} checked={allFromMemory} onChange={setAllFromMemory} />
        {choice !== undefined && hasForChildren(choice) ? (
          <Check label={words.forChildren} checked={forChildren} onChange={setForChildren} />
        ) : null}
      </div>
      {choice?.chosen === null && against !== undefined ? <p>{words.noneInForce({ name: against.name })}</p> : null}
      {against === undefined || others.length === 0 ? (
        <Empty title={words.noOthers} />
      ) : (
        <Compared against={against} others={others} />
      )}
    </MethodsSection>
  );
};
