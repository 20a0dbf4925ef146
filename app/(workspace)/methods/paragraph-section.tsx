'use client';

import { useMemo } from 'react';
import { methodsReport, type MethodsAnswers } from '../../../lib/workspace/methods-report';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { useCohortQuery } from '../../_state/use-cohort-query';
import { useFilter } from '../../_state/use-filter';
import { useSession } from '../../_state/workspace-provider';
import { useSaveFile } from '../../_ui/use-save-file';
import { MethodsSection } from './methods-section';
import styles from './methods-screen.module.css';
import { SectionAnswer } from './section-answer';
import { SOFTWARE_VERSION } from './software-version';

const Paragraph = ({ answers }: { readonly answers: MethodsAnswers }) => {
  const words = useMessages().methods.paragraph;
  const formatters = useFormatters();
  const session = useSession();
  const { filter } = useFilter();
  const { saveFile } = useSaveFile();
  const report = useMemo(
    () => methodsReport(session, SOFTWARE_VERSION, filter, answers, formatters),
    [session, filter, answers, formatters],
  );
  const name = `driftline-${words.fileName}-${session.dataVersion}`;
  const { length } = report.references;
  const files = [
    { label: words.text, ending: 'txt', mediaType: 'text/plain;charset=utf-8', text: report.text },
    { label: words.bibtex, ending: 'bib', mediaType: 'application/x-bibtex', text: report.bibtex },
    { label: words.csl, ending: 'json', mediaType: 'application/vnd.citationstyles.csl+json', text: report.cslJson },
  ];
  return (
    <div className={`sheet ${styles.report ?? ''}`}>
      {report.parts.map(({ topic, heading, sentences }) => (
        <div key={topic}>
          <h3>{heading}</h3>
          <p>{sentences.join(' ')}</p>
        </div>
      ))}
      {length === 0 ? null : (
        <>
          <h3>{words.references}</h3>
          <ol className={styles.references}>
            {report.references.map(({ number, line }) => (
              <li key={number}>
                <bdi>{line}</bdi>
              </li>
            ))}
          </ol>
        </>
      )}
      <div className="row no-print">
        {files.map(({ label, ending, mediaType, text }) => (
          <button
            key={ending}
            type="button"
            className="button"
            onClick={() => {
              saveFile('references', { name: `${name}.${ending}`, mediaType, text }, length);
            }}
          >
            {label}
          </button>
        ))}
      </div>
    </div>
  );
};

/** What is in force, in sentences for a report or a paper, with its references. */
export const ParagraphSection = () => {
  const words = useMessages().methods.paragraph;
  const query = useCohortQuery('methods paragraph', async (open, filter, signal) => ({
    fits: await open.equationFits(filter, signal),
    agreements: await open.agreements(filter, signal),
    ways: await open.measuredWays(filter, signal),
  }));
  return (
    <MethodsSection id="paragraph" lead={words.lead}>
      <SectionAnswer query={query}>{(answers) => <Paragraph answers={answers} />}</SectionAnswer>
    </MethodsSection>
  );
};
