'use client';

import type { Equation } from '../../../lib/measures/equation';
import { useMessages } from '../../_state/language-provider';
import { useSession } from '../../_state/workspace-provider';
import { FilterLink } from '../../_ui/filter-link';
import { useSaveFile } from '../../_ui/use-save-file';
import { ChangingPart } from './changing-part';
import { fitsForm } from './draft-from';
import styles from './methods-screen.module.css';

interface OwnListProps {
  readonly equations: readonly Equation[];
  readonly isInForce: (id: string) => boolean;
  readonly onEdit: (equation: Equation) => void;
  readonly onRemove: (equation: Equation) => void;
}

/** The equations that the clinic entered, each to be changed, saved as a file, or removed. */
export const OwnList = ({ equations, isInForce, onEdit, onRemove }: OwnListProps) => {
  const messages = useMessages();
  const words = messages.methodsOwn;
  const { dataVersion } = useSession();
  const { saveFile } = useSaveFile();
  if (equations.length === 0) return <p className="quiet">{words.none}</p>;
  const download = (equation: Equation): void => {
    saveFile(
      'equation',
      {
        name: `driftline-${equation.id}-v${String(equation.version)}-${dataVersion}.json`,
        mediaType: 'application/json',
        text: `${JSON.stringify(equation, null, 2)}\n`,
      },
      1,
    );
  };
  return (
    <ul className={styles.ownList} aria-label={words.list}>
      {equations.map((equation) => (
        <li key={equation.id}>
          <p className={styles.grow}>
            <FilterLink href={`/methods/?entry=${equation.id}`}>
              <bdi>{equation.name}</bdi>
            </FilterLink>
            <span className="quiet">
              {' · '}
              {messages.methods.quantity[equation.quantity]}
              {' · '}
              {messages.methodsEntries.version(equation)}
              {' · '}
              {messages.methods.status[equation.verification]}
            </span>
          </p>
          <button
            type="button"
            className="button"
            onClick={() => {
              download(equation);
            }}
          >
            <bdi>{words.download(equation)}</bdi>
          </button>
          <ChangingPart>
            <div className="row">
              <button
                type="button"
                className="button"
                disabled={!fitsForm(equation)}
                onClick={() => {
                  onEdit(equation);
                }}
              >
                <bdi>{words.edit(equation)}</bdi>
              </button>
              <button
                type="button"
                className="button"
                disabled={isInForce(equation.id)}
                onClick={() => {
                  onRemove(equation);
                }}
              >
                <bdi>{words.remove(equation)}</bdi>
              </button>
              {isInForce(equation.id) ? <span className="quiet small">{words.inUse}</span> : null}
            </div>
          </ChangingPart>
        </li>
      ))}
    </ul>
  );
};
