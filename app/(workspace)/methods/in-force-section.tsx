'use client';

import type { EquationFit } from '../../../lib/cohort/types/methods';
import type { Quantity } from '../../../lib/measures/equation';
import { useMessages } from '../../_state/language-provider';
import { useSession } from '../../_state/workspace-provider';
import { ActNote } from '../../_ui/act-note';
import { Check } from '../../_ui/check';
import { SegmentedChoice } from '../../_ui/segmented-choice';
import { ChangingPart } from './changing-part';
import { InForceRow } from './in-force-row';
import { MethodsSection } from './methods-section';
import styles from './methods-screen.module.css';
import { useClinicMethods } from './use-clinic-methods';

const OUTSIDE = ['mark', 'exclude'] as const;

/** Which equation computes which quantity, and what happens to readings outside its group. */
export const InForceSection = ({ fits }: { readonly fits: readonly EquationFit[] }) => {
  const words = useMessages().methods.inForce;
  const { settings } = useSession();
  const { methods, choices, acting, save } = useClinicMethods();
  const choose = (quantity: Quantity, id: string | null): void => {
    if (id === null && quantity === 'ffm') return;
    void save({ equations: { ...methods.equations, [quantity]: id } }, words.saved);
  };
  return (
    <MethodsSection id="in-force" lead={words.lead}>
      <ChangingPart>
        <ul className={styles.forces}>
          {choices.map((choice) => (
            <InForceRow
              key={choice.quantity}
              choice={choice}
              fit={fits.find(({ quantity }) => quantity === choice.quantity)}
              switchedOn={methods.switchedOn}
              onChoose={(id) => {
                choose(choice.quantity, id);
              }}
            />
          ))}
          <li className={styles.force}>
            <div>
              <h3>{words.geometry}</h3>
            </div>
            <div className={styles.said}>
              <p>{words.geometryNote}</p>
              <Check
                label={words.geometryOn}
                checked={methods.geometryCorrected}
                onChange={(geometryCorrected) => void save({ geometryCorrected }, words.saved)}
              />
            </div>
          </li>
          <li className={styles.force}>
            <div>
              <SegmentedChoice
                label={words.outside}
                value={settings.outsideEquation}
                options={OUTSIDE.map((value) => ({ value, label: words.outsideOptions[value] }))}
                onChange={(outsideEquation) =>
                  void acting.start(
                    (workspace) => workspace.saveSettings({ ...settings, outsideEquation }),
                    words.saved,
                  )
                }
              />
            </div>
            <p className={`${styles.said ?? ''} quiet`}>{words.outsideNote}</p>
          </li>
        </ul>
      </ChangingPart>
      <ActNote acting={acting} />
    </MethodsSection>
  );
};
