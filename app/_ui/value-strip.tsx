'use client';

import type { StripPoint } from '../../lib/cohort/types/contact-lists';
import { screenTheme } from '../../lib/figures/figure-theme';
import { describeValueStrip } from '../../lib/figures/value-strip/describe';
import { drawValueStrip } from '../../lib/figures/value-strip/draw';
import { buildValueStrip } from '../../lib/figures/value-strip/spec';
import type { MeasureId } from '../../lib/measures/measure-id';
import { useFormatters, useMessages } from '../_state/language-provider';
import { useValueWords } from '../_state/use-value-words';
import { SvgFigure } from './svg-figure';
import styles from './value-strip.module.css';

interface ValueStripProps {
  readonly measure: MeasureId;
  readonly points: readonly StripPoint[];
  readonly baseline: number | undefined;
  readonly leastSignificantChange: number | undefined;
}

/** The last values of one client in the error band, beside the sentence that says the same. */
export const ValueStrip = ({ measure, points, baseline, leastSignificantChange }: ValueStripProps) => {
  const messages = useMessages();
  const formatters = useFormatters();
  const words = useValueWords()(measure);
  const spec = buildValueStrip(
    {
      title: words.title,
      unit: words.measure.unit,
      digits: words.measure.decimals,
      points: points.map((point, index) => ({
        key: String(index),
        date: point.date,
        value: point.value,
        state: point.comparable ? 'comparable' : 'not-comparable',
      })),
      ...(baseline === undefined ? {} : { baseline }),
      ...(leastSignificantChange === undefined ? {} : { leastSignificantChange }),
    },
    { formatters, words: messages.figures, width: 132, height: 52 },
  );
  return (
    <SvgFigure
      className={styles.strip}
      drawing={drawValueStrip(spec, screenTheme)}
      label={describeValueStrip(spec, messages.figures)}
    />
  );
};
