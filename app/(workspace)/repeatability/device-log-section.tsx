'use client';

import { useMessages } from '../../_state/language-provider';
import { useSession } from '../../_state/workspace-provider';
import { AnchoredSection } from '../../_ui/anchored-section';
import { studyTools } from '../../../lib/workspace/study-tools';
import { DeviceLogChart } from './device-log-chart';
import { DeviceLogForm } from './device-log-form';

/** What every device reads on something that should not change, and the steps that a person marked. */
export const DeviceLogSection = () => {
  const words = useMessages().devices.log;
  const { log, steps } = useSession().settings.devices;
  const charts = studyTools.logCharts(log, steps);
  return (
    <AnchoredSection id="device-log" title={words.title} lead={words.lead} className="sheet">
      {charts.length === 0 ? <p>{words.none}</p> : null}
      {charts.map((chart) => (
        <DeviceLogChart key={`${chart.device}|${chart.kind}`} chart={chart} />
      ))}
      <DeviceLogForm />
    </AnchoredSection>
  );
};
