'use client';

import { useState, type FormEvent } from 'react';
import type { DeviceLogEntry } from '../../../lib/cohort/settings-parts/device-settings';
import { useMessages } from '../../_state/language-provider';
import { localToday } from '../../_state/local-today';
import { ActNote } from '../../_ui/act-note';
import { LabelledInput } from '../../_ui/labelled-input';
import { LabelledSelect } from '../../_ui/labelled-select';
import { studyTools } from '../../../lib/workspace/study-tools';
import styles from './repeatability-screen.module.css';
import { useSignature } from './use-signature';
import { useDeviceSettings } from './use-device-settings';

const KINDS = ['phantom', 'volunteer'] as const;

/** Enters one measurement into the device log, or takes the last one of a device away. */
export const DeviceLogForm = () => {
  const words = useMessages().devices.log;
  const { initials, field } = useSignature();
  const { devices, acting, writer, save } = useDeviceSettings();
  const [device, setDevice] = useState('');
  const [kind, setKind] = useState<DeviceLogEntry['kind']>('phantom');
  const [on, setOn] = useState<string>(localToday());
  const [r, setR] = useState('');
  const [xc, setXc] = useState('');
  const last = devices.log.findLast((entry) => entry.device === device.trim());
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    const entry = studyTools.readLogEntry({ device, on, r, xc }, kind, initials);
    if (entry === undefined) {
      acting.say(words.wrong);
      return;
    }
    void save({ log: [...devices.log, entry] }, words.entered).then((done) => {
      if (!done) return;
      setR('');
      setXc('');
    });
  };
  return (
    <form className="no-print" onSubmit={submit}>
      <fieldset className={styles.choices} disabled={!writer || acting.busy}>
        <div className={styles.plan}>
          <LabelledInput label={words.device} type="text" value={device} onChange={setDevice} />
          <LabelledSelect
            label={words.kind}
            value={kind}
            options={KINDS.map((value) => ({ value, label: words.kinds[value] }))}
            onChange={setKind}
          />
          <LabelledInput label={words.date} type="date" value={on} onChange={setOn} />
          <LabelledInput label={words.r} type="text" inputMode="decimal" value={r} onChange={setR} />
          <LabelledInput label={words.xc} type="text" inputMode="decimal" value={xc} onChange={setXc} />
          {field}
        </div>
        <div className="row">
          <button type="submit" className="button">
            {words.add}
          </button>
          <button
            type="button"
            className="button"
            disabled={last === undefined}
            onClick={() => void save({ log: devices.log.filter((entry) => entry !== last) }, words.removed)}
          >
            {words.remove}
          </button>
        </div>
      </fieldset>
      <ActNote acting={acting} />
    </form>
  );
};
