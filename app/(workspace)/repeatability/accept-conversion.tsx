'use client';

import type { DeviceConversion } from '../../../lib/cohort/settings-parts/device-settings';
import type { CrossCheck } from '../../../lib/cohort/types/cross-check';
import type { IsoDate } from '../../../lib/core/iso-date';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { localToday } from '../../_state/local-today';
import { useActing } from '../../_state/use-acting';
import { useSession } from '../../_state/workspace-provider';
import { ActNote } from '../../_ui/act-note';
import { biasOf } from './cross-check-view';
import styles from './repeatability-screen.module.css';
import { useSignature } from './use-signature';

/** Accepts a cross-check with date and initials, or takes it back. */
export const AcceptConversion = ({ check }: { readonly check: CrossCheck }) => {
  const words = useMessages().devices.crossCheck;
  const f = useFormatters();
  const { initials, field } = useSignature();
  const { settings, keeping } = useSession();
  const acting = useActing();
  const { conversions } = settings.devices;
  const { first, second, people, enough, accepted } = check;
  const [r, xc, weight] = [biasOf(check, 'r'), biasOf(check, 'xc'), biasOf(check, 'weight')];
  const save = (next: readonly DeviceConversion[]): void =>
    void acting.start(
      (workspace) => workspace.saveSettings({ ...settings, devices: { ...settings.devices, conversions: [...next] } }),
      words.saved,
    );
  const unit = (value: number, ucum: 'Ohm' | 'kg', digits: number): string =>
    `${f.change(value, ucum, digits)}\u00A0${f.unit(ucum)}`;
  return (
    <fieldset className={styles.choices} disabled={!keeping.writer || acting.busy}>
      {accepted === null ? (
        <p>{enough ? words.off : words.notEnough}</p>
      ) : (
        <>
          <p>
            {words.accepted({
              on: f.dateShort(accepted.on as IsoDate),
              initials: accepted.initials,
              people: accepted.people,
              r: unit(accepted.r, 'Ohm', 1),
              xc: unit(accepted.xc, 'Ohm', 1),
              weight: unit(accepted.weight, 'kg', 2),
            })}
          </p>
          {enough ? null : <p>{words.notEnough}</p>}
          <button
            type="button"
            className="button"
            onClick={() => {
              save(conversions.filter((one) => one.first !== first || one.second !== second));
            }}
          >
            {words.takeBack}
          </button>
        </>
      )}
      {accepted === null && enough && r !== undefined && xc !== undefined && weight !== undefined ? (
        <>
          <p className="quiet small">{words.acceptNote}</p>
          {field}
          <button
            type="button"
            className="button"
            disabled={initials === ''}
            onClick={() => {
              save([...conversions, { first, second, on: localToday(), initials, people, r, xc, weight }]);
            }}
          >
            {words.accept}
          </button>
        </>
      ) : null}
      <ActNote acting={acting} />
    </fieldset>
  );
};
