'use client';

import { useMemo, useState } from 'react';
import type { CrossCheck } from '../../../lib/cohort/types/cross-check';
import { describeAgreement, tableAgreement } from '../../../lib/figures/agreement/describe';
import { drawAgreement } from '../../../lib/figures/agreement/draw';
import { buildAgreement } from '../../../lib/figures/agreement/spec';
import type { AnyMeasureId } from '../../../lib/measures/measure-id';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { useValueNames } from '../../_state/use-value-names';
import { FigureFrame } from '../../_ui/figure-frame';
import { LabelledSelect } from '../../_ui/labelled-select';
import { useFigureContext } from '../../_ui/use-figure-context';
import { useNarrow } from '../../_ui/use-narrow';
import { useOpenPath } from '../../_ui/use-open-path';
import { AcceptConversion } from './accept-conversion';
import { crossCheckFigure, crossCheckSentence } from './cross-check-view';
import styles from './repeatability-screen.module.css';

const Chart = ({ check, measure }: { readonly check: CrossCheck; readonly measure: AnyMeasureId }) => {
  const words = useMessages().devices.crossCheck;
  const formatters = useFormatters();
  const nameOf = useValueNames();
  const openPath = useOpenPath();
  const narrow = useNarrow();
  const context = useFigureContext({ width: narrow ? 310 : 720, height: narrow ? 300 : 340 });
  const { first, second } = check;
  const value = check.values.find((one) => one.measure === measure) ?? check.values[0];
  const spec = useMemo(
    () =>
      value === undefined
        ? undefined
        : buildAgreement(crossCheckFigure(value, { first, second }, words, formatters), context),
    [value, first, second, words, formatters, context],
  );
  if (spec === undefined || value === undefined) return null;
  return (
    <FigureFrame
      frame={{
        title: words.figureTitle({ value: nameOf(value.measure), first, second }),
        subtitle: words.figureSubtitle({ n: spec.points.length }),
        caption: words.figureCaption,
      }}
      draw={(theme) => drawAgreement(spec, theme)}
      alternative={describeAgreement(spec, context.words)}
      table={tableAgreement(spec, context.words)}
      fileName={`cross-check-${value.measure.replaceAll('_', '-')}`}
      headingLevel={3}
      onOpenPoint={(key) => {
        openPath(`/client/?c=${key}`);
      }}
    />
  );
};

/** Two devices: difference and limits of what a conversion changes, and whether it is accepted. */
export const CrossCheckPair = ({ check }: { readonly check: CrossCheck }) => {
  const words = useMessages().devices.crossCheck;
  const formatters = useFormatters();
  const nameOf = useValueNames();
  const [measure, setMeasure] = useState<AnyMeasureId>('r');
  const { first, second, people, leftOut } = check;
  const sentences = check.values.flatMap(
    (value) => crossCheckSentence(value, nameOf(value.measure), words, formatters) ?? [],
  );
  return (
    <section className={styles.pair} aria-label={words.pair({ first, second })}>
      <h3>{words.pair({ first, second })}</h3>
      <ul className={styles.facts}>
        <li>{words.people({ n: people, leftOut })}</li>
        {sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      <AcceptConversion check={check} />
      <div className={`no-print ${styles.plan ?? ''}`}>
        <LabelledSelect
          label={words.choose}
          value={measure}
          options={check.values.map((value) => ({ value: value.measure, label: nameOf(value.measure) }))}
          onChange={setMeasure}
        />
      </div>
      <Chart check={check} measure={measure} />
    </section>
  );
};
