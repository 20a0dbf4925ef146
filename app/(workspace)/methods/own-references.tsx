'use client';

import { readOwnReference } from '../../../lib/workspace/read-own-reference';
import { useMessages } from '../../_state/language-provider';
import { ActNote } from '../../_ui/act-note';
import { FileField } from '../../_ui/file-field';
import { FilterLink } from '../../_ui/filter-link';
import { ChangingPart } from './changing-part';
import styles from './methods-screen.module.css';
import { useClinicMethods } from './use-clinic-methods';

/** The reference populations that the clinic read in, and the way to read in another. */
export const OwnReferences = () => {
  const words = useMessages().methodsEntries.ownReference;
  const { methods, acting, save } = useClinicMethods();
  const own = methods.ownReferences;
  const read = async (file: File | undefined): Promise<void> => {
    if (file === undefined) return;
    const found = await acting.ask(() => readOwnReference(file));
    if (found === undefined) return;
    const others = own.filter(({ id }) => id !== found.id);
    await save({ ownReferences: [...others, found] }, words.kept({ name: found.name }));
  };
  return (
    <ChangingPart>
      <h3>{words.title}</h3>
      {own.length === 0 ? null : (
        <ul className={styles.ownList}>
          {own.map(({ id, name }) => (
            <li key={id}>
              <p className={styles.grow}>
                <FilterLink href={`/methods/?entry=reference-${id}`}>
                  <bdi>{name}</bdi>
                </FilterLink>
              </p>
              <button
                type="button"
                className="button"
                disabled={acting.busy}
                onClick={() =>
                  void save({ ownReferences: own.filter((one) => one.id !== id) }, words.removed({ name }))
                }
              >
                <bdi>{words.remove({ name })}</bdi>
              </button>
            </li>
          ))}
        </ul>
      )}
      <FileField label={words.read} onFile={(file) => void read(file)} disabled={acting.busy} />
      <p className="quiet small measure">{words.hint}</p>
      <ActNote acting={acting} />
    </ChangingPart>
  );
};
