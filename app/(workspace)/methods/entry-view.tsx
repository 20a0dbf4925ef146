'use client';

import { useMessages } from '../../_state/language-provider';
import { useSession } from '../../_state/workspace-provider';
import { FilterLink } from '../../_ui/filter-link';
import { Sentence } from '../../_ui/sentence';
import { CutOffEntry } from './cut-off-entry';
import { entryAbout, entryName } from './entry-words';
import { EquationEntry } from './equation-entry';
import { FormulaEntry } from './formula-entry';
import { methodEntries, type MethodEntry } from './method-entries';
import styles from './methods-screen.module.css';
import { ReferenceEntry } from './reference-entry';
import { useClinicMethods } from './use-clinic-methods';
import { ValueEntry } from './value-entry';

const EntryBody = ({ entry }: { readonly entry: MethodEntry }) => {
  switch (entry.kind) {
    case 'value':
      return <ValueEntry measure={entry.measure} />;
    case 'formula':
      return <FormulaEntry formula={entry.formula} />;
    case 'equation':
      return <EquationEntry equation={entry.equation} />;
    case 'reference':
      return <ReferenceEntry reference={entry.reference} />;
    case 'cut-off':
      return <CutOffEntry cutOff={entry.cutOff} />;
  }
};

/** One entry of the catalogue on a page of its own. */
export const EntryView = ({ id }: { readonly id: string }) => {
  const messages = useMessages();
  const words = messages.methodsEntries;
  const { cohort } = useSession();
  const { equations, methods } = useClinicMethods();
  const entry = methodEntries(cohort.catalogue, equations, methods.ownReferences).find((one) => one.id === id);
  const back = (
    <FilterLink className="button" href="/methods/#entries">
      {words.back}
    </FilterLink>
  );
  if (entry === undefined)
    return (
      <Sentence detail={words.unknownEntryBody} actions={back}>
        {words.unknownEntry}
      </Sentence>
    );
  const version = entry.kind === 'equation' && entry.equation.version > 1 ? ` · ${words.version(entry.equation)}` : '';
  return (
    <div className={styles.screen}>
      <Sentence
        overline={`${words.overline({ kind: words.kinds[entry.kind], about: entryAbout(entry, messages) })}${version}`}
        detail={messages.methods.status[entry.status]}
        actions={back}
      >
        <bdi>{entryName(entry, messages)}</bdi>
      </Sentence>
      <EntryBody entry={entry} />
    </div>
  );
};
