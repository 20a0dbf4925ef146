'use client';

import type { EquationFit } from '../../../lib/cohort/types/methods';
import type { MethodChoice } from '../../../lib/workspace/method-choices';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { FilterLink } from '../../_ui/filter-link';
import { groupWords } from './entry-words';
import { EquationSelect } from './equation-select';
import { missedParts } from './methods-finding';
import styles from './methods-screen.module.css';
import { SwitchOn } from './switch-on';

interface InForceRowProps {
  readonly choice: MethodChoice;
  readonly fit: EquationFit | undefined;
  readonly switchedOn: readonly string[];
  readonly onChoose: (id: string | null) => void;
}

/** One quantity: its equation, the group that was made for, and how many visits lie inside. */
export const InForceRow = ({ choice, fit, switchedOn, onChoose }: InForceRowProps) => {
  const messages = useMessages();
  const formatters = useFormatters();
  const words = messages.methods.inForce;
  const name = messages.methods.quantity[choice.quantity];
  const { chosen } = choice;
  const missed = fit === undefined ? [] : missedParts(fit, messages.methods);
  return (
    <li className={styles.force}>
      <div>
        <h3>{name.charAt(0).toLocaleUpperCase(formatters.locale) + name.slice(1)}</h3>
        <EquationSelect choice={choice} switchedOn={switchedOn} onChoose={onChoose} />
      </div>
      <div className={styles.said}>
        {chosen === null ? (
          <p>{words.notComputed}</p>
        ) : (
          <>
            {fit === undefined ? <p>{words.notJudged}</p> : <p>{words.inside(fit)}</p>}
            {missed.length === 0 ? null : <p>{words.missed({ reasons: missed })}</p>}
            <p className="quiet">{words.madeFor({ group: groupWords(chosen, messages, formatters) })}</p>
            <p className="quiet">
              {messages.methods.status[chosen.verification]}
              <span className="no-print">
                {' · '}
                <FilterLink href={`/methods/?entry=${chosen.id}`}>
                  {words.details}: {chosen.name}
                </FilterLink>
              </span>
            </p>
          </>
        )}
        {choice.fromMemory.length === 0 ? null : (
          <details className="no-print">
            <summary>{words.switchOnTitle({ n: choice.fromMemory.length, quantity: name })}</summary>
            <p className="small">{words.switchOnLead}</p>
            <ul className={styles.switches}>
              {choice.fromMemory.map((equation) => (
                <li key={equation.id}>
                  <FilterLink href={`/methods/?entry=${equation.id}`}>{equation.name}</FilterLink>
                  <SwitchOn equation={equation} />
                </li>
              ))}
            </ul>
          </details>
        )}
      </div>
    </li>
  );
};
