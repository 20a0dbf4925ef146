'use client';

import {
  isReferenceInForceByDefault,
  type OwnCohortReference,
  type ReferenceSet,
} from '../../../lib/measures/references/reference-set';
import { offeredReferences } from '../../../lib/workspace/offered-methods';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { useSession } from '../../_state/workspace-provider';
import { CautionsList } from './cautions-list';
import { CitationText } from './citation-text';
import { FactList } from '../../_ui/fact-list';
import styles from './methods-screen.module.css';
import { OfferSwitch } from './offer-switch';
import { PlainTable } from './plain-table';
import { percentileTable, strataTable } from './reference-strata';

/** One reference population: whose figures, how they were measured, how far checked. */
export const ReferenceEntry = ({ reference }: { readonly reference: ReferenceSet | OwnCohortReference }) => {
  const messages = useMessages();
  const formatters = useFormatters();
  const { settings } = useSession();
  const words = messages.methodsEntries;
  const { reference: said } = words;
  const cautions = <CautionsList key="c" cautions={reference.cautions} />;
  if (reference.kind === 'own-cohort')
    return (
      <section className={styles.block}>
        <FactList
          facts={[
            [words.madeFor, reference.label],
            [words.cautions, cautions],
            [words.usedHere, said.own],
          ]}
        />
      </section>
    );
  const { method } = reference;
  const table = strataTable(reference, messages, formatters);
  const percentiles = percentileTable(reference, messages, formatters);
  return (
    <>
      <section className={styles.block}>
        <FactList
          facts={[
            [words.status, reference.verificationNote],
            [said.label, reference.label],
            [words.madeFor, reference.population],
            [
              words.measured,
              [
                said.method[method.kind],
                ...(method.electrodePath === null ? [] : [words.path({ path: method.electrodePath })]),
                ...(method.frequencyKhz === null ? [] : [words.khz({ khz: method.frequencyKhz })]),
                ...(method.posture === null ? [] : [words.posture[method.posture]]),
              ].join(', '),
            ],
            [words.cautions, reference.cautions.length === 0 ? null : cautions],
            [words.source, <CitationText key="s" citation={reference.citation} />],
          ]}
        />
        {reference.verification === 'entered-by-clinic' ? null : (
          <OfferSwitch
            kind="references"
            id={reference.id}
            name={reference.name}
            byDefault={isReferenceInForceByDefault(reference)}
            offered={offeredReferences(settings).some(({ id }) => id === reference.id)}
          />
        )}
      </section>
      <div className="sheet">
        <PlainTable caption={said.strata} columns={table.columns} rows={table.rows} />
      </div>
      {percentiles === undefined ? null : (
        <div className="sheet">
          <PlainTable caption={said.percentiles} columns={percentiles.columns} rows={percentiles.rows} />
        </div>
      )}
    </>
  );
};
