'use client';

import { useMemo } from 'react';
import type { CoverageRow } from '../../../lib/cohort/types/comparability';
import { describeShareBars, tableShareBars } from '../../../lib/figures/share-bars/describe';
import { drawShareBars } from '../../../lib/figures/share-bars/draw';
import { buildShareBars, type ShareFill } from '../../../lib/figures/share-bars/spec';
import { useMessages } from '../../_state/language-provider';
import { FigureFrame } from '../../_ui/figure-frame';
import { useFigureContext } from '../../_ui/use-figure-context';
import { useNarrow } from '../../_ui/use-narrow';
import { STATES } from './over-groups';

const FILLS: Readonly<Record<(typeof STATES)[number], ShareFill>> = {
  met: 'solid',
  byProcedure: 'stripes',
  notMet: 'strokes',
  unknown: 'dots',
  notRecorded: 'empty',
};

/** What the record holds of every condition, as divided bars; the table below gives the numbers. */
export const CoverageFigure = ({ rows }: { readonly rows: readonly CoverageRow[] }) => {
  const { comparability, reasons } = useMessages();
  const words = comparability.coverage;
  const narrow = useNarrow();
  const context = useFigureContext({ width: narrow ? 310 : 860 });
  const readings = rows[0]?.readings ?? 0;
  const spec = useMemo(
    () =>
      buildShareBars(
        {
          title: words.figureAxis({ readings }),
          parts: STATES.map((state) => ({ id: state, fill: FILLS[state], ...words.parts[state] })),
          rows: rows.map((row) => ({
            id: row.rule,
            label: reasons.condition[row.rule],
            counts: STATES.map((state) => row[state]),
          })),
        },
        context,
      ),
    [rows, readings, words, reasons, context],
  );
  return (
    <FigureFrame
      frame={{ title: words.figureTitle, subtitle: words.figureSubtitle({ readings }), caption: words.note }}
      draw={(theme) => drawShareBars(spec, theme)}
      alternative={describeShareBars(spec, context.words)}
      table={tableShareBars(spec, context.words)}
      fileName="record-of-conditions"
      headingLevel={3}
    />
  );
};
