'use client';

import { useMemo, useState } from 'react';
import type { ExportAgreement } from '../../../lib/cohort/types/methods';
import { describeAgreement, tableAgreement } from '../../../lib/figures/agreement/describe';
import { drawAgreement } from '../../../lib/figures/agreement/draw';
import { buildAgreement } from '../../../lib/figures/agreement/spec';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { useCohortQuery } from '../../_state/use-cohort-query';
import { useValueWords } from '../../_state/use-value-words';
import { useSession } from '../../_state/workspace-provider';
import { DataTable } from '../../_ui/data-table';
import { FigureFrame } from '../../_ui/figure-frame';
import { LabelledSelect } from '../../_ui/labelled-select';
import { Empty } from '../../_ui/states';
import { useFigureContext } from '../../_ui/use-figure-context';
import { useOpenPath } from '../../_ui/use-open-path';
import { agreementColumns, agreementFigure, agreementFinding } from './agreement-view';
import { MethodsSection } from './methods-section';
import { SectionAnswer } from './section-answer';
import styles from './methods-screen.module.css';

const AgreementChart = ({ row }: { readonly row: ExportAgreement }) => {
  const words = useMessages().methods.agreement;
  const formatters = useFormatters();
  const valueWords = useValueWords();
  const openPath = useOpenPath();
  const { cohort } = useSession();
  const context = useFigureContext({ width: 1000, height: 380 });
  const { name } = valueWords(row.computed);
  const spec = useMemo(
    () => buildAgreement(agreementFigure(row, name, words, formatters), context),
    [row, name, words, formatters, context],
  );
  const { equation } = cohort.catalogue.measure(row.computed);
  return (
    <FigureFrame
      frame={{
        title: words.figureTitle({ value: name }),
        subtitle: words.figureSubtitle({ n: spec.points.length }),
        caption: words.caption({ equation: equation?.name ?? words.byDefinition }),
      }}
      draw={(theme) => drawAgreement(spec, theme)}
      alternative={describeAgreement(spec, context.words)}
      table={tableAgreement(spec, context.words)}
      fileName={`exported-against-computed-${row.computed.replaceAll('_', '-')}`}
      headingLevel={3}
      onOpenPoint={(key) => {
        openPath(`/client/?c=${key}`);
      }}
    />
  );
};

const Agreements = ({ rows }: { readonly rows: readonly ExportAgreement[] }) => {
  const words = useMessages().methods.agreement;
  const formatters = useFormatters();
  const valueWords = useValueWords();
  const [chosen, setChosen] = useState<string>('');
  const columns = useMemo(
    () => agreementColumns(words, (row) => valueWords(row.computed).name, formatters),
    [words, valueWords, formatters],
  );
  const row = rows.find(({ computed }) => computed === chosen) ?? rows[0];
  if (row === undefined) return <Empty title={words.none} />;
  return (
    <>
      <div className={`${styles.fields ?? ''} no-print`}>
        <LabelledSelect
          label={words.choose}
          value={row.computed}
          options={rows.map(({ computed }) => ({ value: computed, label: valueWords(computed).name }))}
          onChange={setChosen}
        />
      </div>
      <p className={styles.finding}>{agreementFinding(row, valueWords(row.computed).name, words, formatters)}</p>
      <div className="sheet">
        <AgreementChart row={row} />
      </div>
      <div className="sheet">
        <DataTable
          caption={words.table}
          rows={rows}
          columns={columns}
          rowKey={({ computed }) => computed}
          fileName={words.fileName}
          rowsWord={words.rowsWord({ n: rows.length })}
          isMarked={({ computed }) => computed === row.computed}
        />
      </div>
    </>
  );
};

/** Values that exist twice, side by side. */
export const AgreementSection = () => {
  const words = useMessages().methods.agreement;
  const query = useCohortQuery('agreements', (open, filter, signal) => open.agreements(filter, signal));
  return (
    <MethodsSection id="agreement" lead={words.lead}>
      <SectionAnswer query={query}>{(rows) => <Agreements rows={rows} />}</SectionAnswer>
    </MethodsSection>
  );
};
