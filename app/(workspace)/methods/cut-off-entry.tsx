'use client';

import { SI_UNITS, shownUnit } from '../../../lib/core/units';
import { CUT_OFF_UNITS, isCutOffInForceByDefault, type CutOff } from '../../../lib/measures/cut-offs/cut-off';
import { offeredCutOffs } from '../../../lib/workspace/offered-methods';
import { useMessages } from '../../_state/language-provider';
import { useSession } from '../../_state/workspace-provider';
import { CautionsList } from './cautions-list';
import { CitationText } from './citation-text';
import { FactList } from '../../_ui/fact-list';
import styles from './methods-screen.module.css';
import { OfferSwitch } from './offer-switch';
import { PlainTable } from './plain-table';
import { useClinicMethods } from './use-clinic-methods';

/** One cut-off: where it divides, for whom, by which method and equation, how far checked. */
export const CutOffEntry = ({ cutOff }: { readonly cutOff: CutOff }) => {
  const messages = useMessages();
  const words = messages.methodsEntries;
  const { cutOff: said, reference } = words;
  const { equations } = useClinicMethods();
  const { settings } = useSession();
  const names = (cutOff.equationIds ?? []).map((id) => equations.find((equation) => equation.id === id)?.name ?? id);
  return (
    <>
      <section className={styles.block}>
        <FactList
          facts={[
            [words.status, cutOff.verificationNote],
            [said.measuredBy, cutOff.methods.map((method) => said.method[method]).join(', ')],
            [said.unit, shownUnit(CUT_OFF_UNITS[cutOff.quantity], SI_UNITS).label],
            [said.equations, names.join(', ')],
            [said.group, cutOff.group ?? said.noGroup],
            [said.bound, cutOff.boundRule],
            [words.cautions, cutOff.cautions.length === 0 ? null : <CautionsList key="c" cautions={cutOff.cautions} />],
            [words.source, <CitationText key="s" citation={cutOff.citation} />],
          ]}
        />
        <OfferSwitch
          kind="cutOffs"
          id={cutOff.id}
          name={cutOff.name}
          byDefault={isCutOffInForceByDefault(cutOff)}
          offered={offeredCutOffs(settings).some(({ id }) => id === cutOff.id)}
        />
        <p className="quiet">{said.note}</p>
      </section>
      <div className="sheet">
        <PlainTable
          caption={said.intervals}
          columns={[reference.sex, reference.ages, said.range]}
          rows={cutOff.branches.flatMap((branch) =>
            branch.intervals.map((interval, place) => [
              place > 0 ? '' : branch.sex === undefined ? said.everyone : words.sexes[branch.sex],
              place > 0
                ? ''
                : branch.ageBelow === undefined
                  ? reference.agesOpen({ from: branch.ageFrom })
                  : reference.agesBelow({ from: branch.ageFrom, to: branch.ageBelow }),
              interval.words,
            ]),
          )}
        />
      </div>
    </>
  );
};
