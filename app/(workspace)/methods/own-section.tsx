'use client';

import { useState } from 'react';
import type { Equation } from '../../../lib/measures/equation';
import { useMessages } from '../../_state/language-provider';
import { ActNote } from '../../_ui/act-note';
import { FileField } from '../../_ui/file-field';
import { ChangingPart } from './changing-part';
import { draftFrom } from './draft-from';
import { MethodsSection } from './methods-section';
import styles from './methods-screen.module.css';
import { EMPTY_DRAFT, type OwnDraft } from './own-draft';
import { OwnForm } from './own-form';
import { OwnList } from './own-list';
import { readOwnEquation } from './read-own-equation';
import { useClinicMethods } from './use-clinic-methods';

const isInForce = (equations: Readonly<Record<string, string | null>>, id: string): boolean =>
  Object.values(equations).includes(id);

/** The clinic's own equations: what was entered, and the form for another. */
export const OwnSection = () => {
  const words = useMessages().methodsOwn;
  const { methods, equations, acting, save } = useClinicMethods();
  const [draft, setDraft] = useState<OwnDraft | undefined>(undefined);
  const [opened, setOpened] = useState(0);
  const own = equations.filter(({ verification }) => verification === 'entered-by-clinic');
  const open = (next: OwnDraft): void => {
    setDraft(next);
    setOpened(opened + 1);
    acting.say(undefined);
  };
  const keep = async (equation: Equation): Promise<void> => {
    const { name, version } = equation;
    const said = isInForce(methods.equations, equation.id) ? words.savedInForce : words.saved;
    if (await save({ ownEquations: [...methods.ownEquations, equation] }, said({ name, version }))) setDraft(undefined);
  };
  const read = async (file: File | undefined): Promise<void> => {
    if (file === undefined) return;
    const found = readOwnEquation(await file.text());
    if (found === undefined) {
      acting.say(words.uploadRefused);
      return;
    }
    const kept = own.find(({ id }) => id === found.id);
    open(draftFrom(found, kept?.version ?? 0));
    acting.say(words.uploaded({ name: found.name }));
  };
  const remove = ({ id, name }: Equation): void =>
    void save({ ownEquations: methods.ownEquations.filter((one) => one.id !== id) }, words.removed({ name }));
  return (
    <MethodsSection id="own" lead={words.lead}>
      <OwnList
        equations={own}
        isInForce={(id) => isInForce(methods.equations, id)}
        onEdit={(equation) => {
          open(draftFrom(equation, equation.version));
        }}
        onRemove={remove}
      />
      <ChangingPart>
        {draft === undefined ? (
          <div className={`${styles.fields ?? ''} no-print`}>
            <button
              type="button"
              className="button"
              onClick={() => {
                open(EMPTY_DRAFT);
              }}
            >
              {words.start}
            </button>
            <FileField label={words.upload} onFile={(file) => void read(file)} />
          </div>
        ) : (
          <div className="no-print">
            <OwnForm
              key={opened}
              draft={draft}
              onDraft={setDraft}
              taken={own.filter(({ id }) => id !== draft.id).map(({ id }) => id)}
              busy={acting.busy}
              onSave={(equation) => void keep(equation)}
              onClose={() => {
                setDraft(undefined);
              }}
            />
          </div>
        )}
      </ChangingPart>
      <ActNote acting={acting} />
    </MethodsSection>
  );
};
