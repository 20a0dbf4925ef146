'use client';

import { useState } from 'react';
import type { Equation } from '../../../lib/measures/equation';
import { useMessages } from '../../_state/language-provider';
import { ActNote } from '../../_ui/act-note';
import { Check } from '../../_ui/check';
import { ChangingPart } from './changing-part';
import styles from './methods-screen.module.css';
import { useClinicMethods } from './use-clinic-methods';

/** Switches an equation from memory on, once somebody says that it was compared with the paper; or off again. */
export const SwitchOn = ({ equation }: { readonly equation: Equation }) => {
  const { inForce: words } = useMessages().methods;
  const { methods, acting, save } = useClinicMethods();
  const [checked, setChecked] = useState(false);
  const { id, name } = equation;
  const isOn = methods.switchedOn.includes(id);
  const inUse = isOn && methods.equations[equation.quantity] === id;
  const switchOn = (): void => {
    setChecked(false);
    void save({ switchedOn: [...methods.switchedOn, id] }, words.switchedOn({ name }));
  };
  const switchOff = (): void =>
    void save({ switchedOn: methods.switchedOn.filter((one) => one !== id) }, words.switchedOff({ name }));
  return (
    <ChangingPart>
      {isOn ? (
        <div className={styles.switch}>
          <p>{words.isOn}</p>
          {inUse ? <p className="quiet small">{words.inUse}</p> : null}
          <button type="button" className="button" disabled={inUse || acting.busy} onClick={switchOff}>
            {words.switchOff({ name })}
          </button>
        </div>
      ) : (
        <div className={styles.switch}>
          <Check label={words.checked({ name })} checked={checked} onChange={setChecked} />
          <button type="button" className="button" disabled={!checked || acting.busy} onClick={switchOn}>
            {words.switchOn({ name })}
          </button>
        </div>
      )}
      <ActNote acting={acting} />
    </ChangingPart>
  );
};
