'use client';

import { switched } from '../../../lib/workspace/offered-methods';
import { useMessages } from '../../_state/language-provider';
import { ActNote } from '../../_ui/act-note';
import { Check } from '../../_ui/check';
import { ChangingPart } from './changing-part';
import styles from './methods-screen.module.css';
import { useClinicMethods } from './use-clinic-methods';

interface OfferSwitchProps {
  readonly kind: 'references' | 'cutOffs';
  readonly id: string;
  readonly name: string;
  readonly byDefault: boolean;
  readonly offered: boolean;
}

/** Whether this clinic offers a reference population or a cut-off at all. */
export const OfferSwitch = ({ kind, id, name, byDefault, offered }: OfferSwitchProps) => {
  const words = useMessages().methodsEntries.offer;
  const { methods, acting, save } = useClinicMethods();
  const change = (wanted: boolean): void => {
    const { on, off } = switched(methods[kind], id, byDefault, wanted);
    void save({ [kind]: { on: [...on], off: [...off] } }, wanted ? words.nowOn({ name }) : words.nowOff({ name }));
  };
  return (
    <ChangingPart>
      <div className={styles.switch}>
        <Check label={byDefault ? words.offered : words.checkedAndOffered} checked={offered} onChange={change} />
      </div>
      <ActNote acting={acting} />
    </ChangingPart>
  );
};
