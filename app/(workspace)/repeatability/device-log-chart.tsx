'use client';

import { useMemo, useState } from 'react';
import { parseIsoDate, type IsoDate } from '../../../lib/core/iso-date';
import { describeControlChart, tableControlChart } from '../../../lib/figures/control-chart/describe';
import { drawControlChart } from '../../../lib/figures/control-chart/draw';
import { buildControlChart } from '../../../lib/figures/control-chart/spec';
import type { LogChart } from '../../../lib/workspace/study-tools';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { ActNote } from '../../_ui/act-note';
import { FigureFrame } from '../../_ui/figure-frame';
import { LabelledInput } from '../../_ui/labelled-input';
import { useFigureContext } from '../../_ui/use-figure-context';
import { useNarrow } from '../../_ui/use-narrow';
import { logFigure } from './device-log-figure';
import styles from './repeatability-screen.module.css';
import { useSignature } from './use-signature';
import { useDeviceSettings } from './use-device-settings';

/** Marks a step on a device, or takes one back. */
const Steps = ({ chart }: { readonly chart: LogChart }) => {
  const words = useMessages().devices.log;
  const f = useFormatters();
  const { initials, field } = useSignature();
  const { devices, acting, writer, save } = useDeviceSettings();
  const [on, setOn] = useState<string>(chart.suggested?.on ?? '');
  const [reason, setReason] = useState('');
  const day = parseIsoDate(on);
  return (
    <details className="no-print">
      <summary>{words.step}</summary>
      <p className="quiet small">{words.stepNote}</p>
      {chart.steps.map((step) => (
        <p key={step.on}>
          {words.steps({ on: f.dateShort(step.on as IsoDate), reason: step.reason, initials: step.initials })}{' '}
          <button
            type="button"
            className="button"
            disabled={!writer || acting.busy}
            onClick={() => void save({ steps: devices.steps.filter((one) => one !== step) }, words.stepRemoved)}
          >
            {words.stepRemove}
          </button>
        </p>
      ))}
      <div className={styles.plan}>
        <LabelledInput label={words.date} type="date" value={on} onChange={setOn} />
        <LabelledInput label={words.stepReason} type="text" value={reason} onChange={setReason} />
        {field}
      </div>
      <button
        type="button"
        className="button"
        disabled={!writer || acting.busy || day === undefined || initials === ''}
        onClick={() => {
          if (day === undefined) return;
          const step = { device: chart.device, on: day, reason: reason.trim(), initials };
          void save({ steps: [...devices.steps, step] }, words.stepSaid);
        }}
      >
        {words.stepAdd}
      </button>
      <ActNote acting={acting} />
    </details>
  );
};

/** One device's control chart, what lies outside, and its steps. */
export const DeviceLogChart = ({ chart }: { readonly chart: LogChart }) => {
  const words = useMessages().devices.log;
  const f = useFormatters();
  const context = useFigureContext({ width: useNarrow() ? 310 : 900, height: 300 });
  const spec = useMemo(() => buildControlChart(logFigure(chart, words.axis), context), [chart, words.axis, context]);
  const outside = spec.points.filter((point) => point.outside);
  const bare = chart.segments.find(({ limits }) => limits === undefined);
  const hasLimits = chart.segments.some(({ limits }) => limits !== undefined);
  const inOrOut =
    outside.length === 0
      ? words.inside
      : words.outside({ n: outside.length, dates: outside.map(({ dateText }) => dateText) });
  const divisions = chart.segments.length - 1;
  const finding = [
    ...(hasLimits ? [inOrOut] : []),
    ...(divisions === 0 ? [] : [words.apart({ n: divisions })]),
    ...(bare === undefined
      ? []
      : [bare.from === null ? words.tooFew : words.tooFewSince({ on: f.dateShort(bare.from) })]),
  ].join(' ');
  return (
    <section
      className={styles.pair}
      aria-label={words.figureTitle({ device: chart.device, kind: words.kinds[chart.kind] })}
    >
      <FigureFrame
        frame={{
          title: words.figureTitle({ device: chart.device, kind: words.kinds[chart.kind] }),
          subtitle: words.figureSubtitle({
            n: chart.entries.length,
            bases: chart.segments.map(({ from, base }) => ({
              from: from === null ? null : f.dateShort(from),
              n: base,
            })),
          }),
          caption: words.figureCaption,
        }}
        draw={(theme) => drawControlChart(spec, theme)}
        alternative={describeControlChart(spec, context.words)}
        table={tableControlChart(spec, context.words)}
        fileName="device-log"
        headingLevel={3}
      />
      <p>{finding}</p>
      {chart.suggested === null ? null : (
        <p>
          {words.suggested({
            on: f.dateShort(chart.suggested.on),
            side: chart.suggested.side,
            n: chart.suggested.readings,
          })}
        </p>
      )}
      <Steps chart={chart} />
    </section>
  );
};
