'use client';

import type { Settings } from '../../../lib/cohort/settings';
import type { ErrorStudy } from '../../../lib/cohort/types/error-study';
import type { IsoDate } from '../../../lib/core/iso-date';
import type { Measure } from '../../../lib/measures/measure';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { localToday } from '../../_state/local-today';
import { useActing } from '../../_state/use-acting';
import { useFilter } from '../../_state/use-filter';
import { useSession } from '../../_state/workspace-provider';
import { ActNote } from '../../_ui/act-note';
import { AnchoredSection } from '../../_ui/anchored-section';
import { Check } from '../../_ui/check';
import { SegmentedChoice } from '../../_ui/segmented-choice';
import styles from './repeatability-screen.module.css';
import { useSignature } from './use-signature';

const ERROR_FROM: readonly Settings['errorStudy']['errorFrom'][] = [
  'everyone',
  'device',
  'site',
  'program',
  'operator',
];

type Factor = 'conventional' | 'always' | 'cautious';

const factorOf = ({ errorStudy, errorSource }: Settings): Factor =>
  errorStudy.cautious ? 'cautious' : errorSource.alwaysT ? 'always' : 'conventional';

const withFactor = (settings: Settings, factor: Factor): Settings => ({
  ...settings,
  errorStudy: { ...settings.errorStudy, cautious: factor === 'cautious' },
  errorSource: { ...settings.errorSource, alwaysT: factor === 'always' },
});

interface ChoicesSectionProps {
  readonly study: ErrorStudy | undefined;
  readonly measure: Measure;
}

/** What a person decides about the threshold: its factor, routine pairs, and the relative form of this value. */
export const ChoicesSection = ({ study, measure }: ChoicesSectionProps) => {
  const words = useMessages().errorStudy.choices;
  const { readerOnly } = useMessages().settings;
  const f = useFormatters();
  const { initials, field } = useSignature();
  const { settings, keeping } = useSession();
  const { measure: id } = useFilter().filter;
  const acting = useActing();
  const save = (next: Settings): void => void acting.start((workspace) => workspace.saveSettings(next), words.saved);
  const { logForm } = settings.errorStudy;
  const accepted = logForm.find((one) => one.measure === id);
  const percent = (value: number): string => words.percent(100 * value);
  const found = study?.logForm;
  const test = found?.test ?? null;
  const sdNow = found?.sdOfLogs ?? null;
  const cv = study?.rmsCv ?? null;
  const saveLogForm = (next: Settings['errorStudy']['logForm']): void => {
    save({ ...settings, errorStudy: { ...settings.errorStudy, logForm: next } });
  };
  return (
    <AnchoredSection id="choices" title={words.title} lead={words.lead} className="sheet">
      {keeping.writer ? null : <p className="quiet small no-print">{readerOnly}</p>}
      <fieldset className={styles.choices} disabled={!keeping.writer || acting.busy}>
        <SegmentedChoice
          label={words.factor}
          value={factorOf(settings)}
          options={(['conventional', 'always', 'cautious'] as const).map((value) => ({
            value,
            label: words.factors[value],
          }))}
          onChange={(factor) => {
            save(withFactor(settings, factor));
          }}
        />
        <p className="quiet small">{words.factorNote}</p>
        <SegmentedChoice
          label={words.from}
          value={settings.errorStudy.errorFrom}
          options={ERROR_FROM.map((value) => ({ value, label: words.froms[value] }))}
          onChange={(errorFrom) => {
            save({ ...settings, errorStudy: { ...settings.errorStudy, errorFrom } });
          }}
        />
        <p className="quiet small">{words.fromNote}</p>
        <Check
          label={words.routine}
          checked={settings.errorStudy.includeRoutine}
          onChange={(includeRoutine) => {
            save({ ...settings, errorStudy: { ...settings.errorStudy, includeRoutine } });
          }}
        />
        <p className="quiet small">{words.routineNote}</p>
        <h3>{words.logTitle({ value: measure.name })}</h3>
        <p>
          {test === null
            ? words.logTooFew
            : words.logTest({
                tau: f.number(test.kendall.tau, 2),
                z: f.number(test.kendall.z, 2),
                p: f.number(test.kendall.oneSidedP, 3),
                ratio: test.ratio === null ? '–' : f.number(test.ratio, 2),
              })}
        </p>
        <p>{test?.suggested === true ? words.logSuggested : words.logNotSuggested}</p>
        {accepted === undefined ? null : (
          <>
            <p>
              {words.logAccepted({
                on: f.dateShort(accepted.on as IsoDate),
                initials: accepted.initials,
                percent: percent(accepted.sdOfLogs),
                now: sdNow === null ? '–' : percent(sdNow),
              })}
            </p>
            <button
              type="button"
              className="button"
              onClick={() => {
                saveLogForm(logForm.filter((one) => one !== accepted));
              }}
            >
              {words.logTakeBack}
            </button>
          </>
        )}
        {accepted === undefined && test?.suggested === true && sdNow !== null ? (
          <>
            {field}
            <button
              type="button"
              className="button"
              disabled={initials === ''}
              onClick={() => {
                saveLogForm([
                  ...logForm,
                  {
                    measure: id,
                    on: localToday(),
                    initials,
                    sdOfLogs: sdNow,
                  },
                ]);
              }}
            >
              {words.logAccept}
            </button>
          </>
        ) : null}
        {cv === null ? null : <p className="quiet small">{words.cv({ percent: words.percent(cv) })}</p>}
      </fieldset>
      <ActNote acting={acting} />
    </AnchoredSection>
  );
};
