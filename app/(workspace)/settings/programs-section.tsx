'use client';

import { useState } from 'react';
import type { Settings } from '../../../lib/cohort/settings';
import type { ProgramSettings } from '../../../lib/cohort/settings-parts/program-settings';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { useSession } from '../../_state/workspace-provider';
import { ActNote } from '../../_ui/act-note';
import { LabelledSelect } from '../../_ui/labelled-select';
import { ProgramForm } from './program-form';
import styles from './settings-screen.module.css';
import { SettingsSection } from './settings-section';
import { WritingPart } from './writing-part';

const NEW = -1;

const useSummary = (): ((program: ProgramSettings) => string) => {
  const { settingsPrograms: words } = useMessages();
  const f = useFormatters();
  return ({ plannedVisitWeeks, reviews, expectedChange }) =>
    words.summary({
      visits: plannedVisitWeeks.length,
      reviews: reviews.map(({ week, windowWeeks }) => `${f.number(week)} ± ${f.number(windowWeeks)}`),
      expected: expectedChange.length,
    });
};

/** The clinic's programs: when they see their clients, what they review and let expect. */
export const ProgramsSection = () => {
  const { settingsPrograms: words } = useMessages();
  const { settings, cohort } = useSession();
  const acting = useActing();
  const summaryOf = useSummary();
  const [open, setOpen] = useState<number | undefined>(undefined);
  const { programs, checkUpsProgram } = settings;
  const save = (next: Settings, said: string): void =>
    void acting
      .start((workspace) => workspace.saveSettings(next), said)
      .then((done) => {
        if (done) setOpen(undefined);
      });
  const formFor = (place: number) => {
    const program = programs[place];
    const others = programs.filter((_, other) => other !== place);
    return (
      <ProgramForm
        program={program}
        others={others}
        busy={acting.busy}
        onSave={(next) => {
          const list =
            program === undefined ? [...programs, next] : programs.map((old) => (old === program ? next : old));
          save({ ...settings, programs: list }, words.saved);
        }}
        onCancel={() => {
          setOpen(undefined);
        }}
        onRemove={
          program === undefined
            ? undefined
            : () => {
                save({ ...settings, programs: others }, words.removed);
              }
        }
      />
    );
  };
  const known = cohort.summary.programs.map(({ name }) => name);
  const missing = known.filter((name) => name !== checkUpsProgram && programs.every((one) => one.name !== name));
  return (
    <SettingsSection id="programs" lead={words.lead}>
      <WritingPart>
        <div className={styles.panel}>
          {programs.length === 0 ? <p>{words.none}</p> : null}
          <ul className={styles.list}>
            {programs.map((program, place) => (
              <li key={program.name}>
                <span className={styles.grow}>
                  <strong>
                    <bdi>{program.name}</bdi>
                  </strong>
                  <br />
                  <span className="quiet small">{summaryOf(program)}</span>
                </span>
                <button
                  type="button"
                  className="button"
                  aria-expanded={open === place}
                  aria-label={words.editOf({ program: program.name })}
                  onClick={() => {
                    setOpen(open === place ? undefined : place);
                  }}
                >
                  {words.edit}
                </button>
                {open === place ? formFor(place) : null}
              </li>
            ))}
          </ul>
          {missing.length === 0 ? null : (
            <p className="quiet small">
              <bdi>{words.fromFiles({ names: missing })}</bdi>
            </p>
          )}
          {open === NEW ? (
            formFor(NEW)
          ) : (
            <button
              type="button"
              className="button"
              onClick={() => {
                setOpen(NEW);
              }}
            >
              {words.add}
            </button>
          )}
          <LabelledSelect
            label={words.checkUps}
            value={checkUpsProgram}
            options={[...new Set([checkUpsProgram, ...programs.map(({ name }) => name), ...known])].map((value) => ({
              value,
              label: value,
            }))}
            onChange={(name) => {
              save({ ...settings, checkUpsProgram: name }, words.saved);
            }}
          />
          <ActNote acting={acting} />
        </div>
      </WritingPart>
    </SettingsSection>
  );
};
