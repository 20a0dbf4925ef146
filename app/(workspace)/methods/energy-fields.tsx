'use client';

import { useState } from 'react';
import { ACTIVITY_BANDS, activityBandOf, totalEnergyExpenditure } from '../../../lib/measures/energy';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { LabelledInput } from '../../_ui/labelled-input';
import { typedNumber } from './calculator';
import styles from './methods-screen.module.css';

/** Total energy expenditure from the resting one, in kcal/d, and a physical activity level that is typed in. */
export const EnergyFields = ({ resting }: { readonly resting: number | undefined }) => {
  const words = useMessages().methodsEntries.calculator;
  const formatters = useFormatters();
  const [pal, setPal] = useState('');
  const level = typedNumber(pal);
  const usable = level !== undefined && level > 0 ? level : undefined;
  const total = usable === undefined || resting === undefined ? undefined : totalEnergyExpenditure(resting, usable);
  const band = usable === undefined ? undefined : activityBandOf(usable);
  const bands = ACTIVITY_BANDS.value.map(({ activity, from, to }) =>
    words.band({
      from: formatters.number(from, 2),
      to: to === undefined ? null : formatters.number(to, 2),
      activity: words.activity[activity],
    }),
  );
  return (
    <div className={styles.energy}>
      <LabelledInput label={words.pal} type="text" inputMode="decimal" maxLength={5} value={pal} onChange={setPal} />
      <p className="quiet small">{words.palHelp({ bands, source: ACTIVITY_BANDS.source })}</p>
      <p>
        <output className={styles.result}>
          {words.result({
            name: words.tee,
            value: total === undefined ? words.unknown : formatters.quantity(total, 'kcal/d', 0),
          })}
        </output>
        {band === undefined ? null : ` (${words.activity[band]})`}
      </p>
      <p className="quiet small">{words.teeNote}</p>
    </div>
  );
};
