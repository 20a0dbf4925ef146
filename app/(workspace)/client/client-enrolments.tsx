'use client';

import { useId, useState } from 'react';
import type { Settings } from '../../../lib/cohort/settings';
import type { ClientDetail, ClientEnrolment } from '../../../lib/cohort/types/client-detail';
import type { IsoDate } from '../../../lib/core/iso-date';
import { enteredEnrolment, withEnrolment, withoutEnrolment } from '../../../lib/workspace/kept-enrolments';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { useValueWords } from '../../_state/use-value-words';
import { useSession } from '../../_state/workspace-provider';
import { ActNote } from '../../_ui/act-note';
import styles from './client-readings.module.css';
import { EndForm } from './end-form';
import { EnrolForm } from './enrol-form';

const keyOf = ({ program, start }: ClientEnrolment): string => `${program} ${start ?? ''}`;
const ADDING = 'a new one';

/** The client's programs: ended with a reason, added, or taken back to what the files say. */
export const ClientEnrolments = ({ detail }: { readonly detail: ClientDetail }) => {
  const messages = useMessages();
  const words = messages.settingsPrograms.enrolments;
  const formatters = useFormatters();
  const { settings, cohort, keeping } = useSession();
  const acting = useActing();
  const valueWords = useValueWords();
  const id = useId();
  const [open, setOpen] = useState<string | undefined>(undefined);
  const { client, enrolments } = detail;
  const save = (next: Settings): void =>
    void acting
      .start((workspace) => workspace.saveSettings(next), words.saved)
      .then((done) => {
        if (done) setOpen(undefined);
      });
  const close = (): void => {
    setOpen(undefined);
  };
  const ahead = settings.enrolments.filter(
    (entry) =>
      entry.client === client && !enrolments.some((one) => one.program === entry.program && one.start === entry.start),
  );
  const offered = [
    ...new Set(
      [...settings.programs, ...cohort.summary.programs].map(({ name }) => name).filter((name) => name !== ''),
    ),
  ];
  const enter = (part: Pick<ClientEnrolment, 'program' | 'start'>, end: string | null, reason: string | null): void => {
    const endReason = reason as Settings['enrolments'][number]['endReason'];
    save(withEnrolment(settings, { client, program: part.program, start: part.start, end, endReason, initials: '' }));
  };
  return (
    <section className="sheet no-print" aria-labelledby={id}>
      <h2 id={id}>{words.title}</h2>
      <p className={`small ${styles.lead ?? ''}`}>{words.lead}</p>
      <ul className={styles.list}>
        {enrolments.map((enrolment) => {
          const { program, start, end, endReason, weightIntended } = enrolment;
          const leanMeant = settings.programs.find(({ name }) => name === program)?.intended.lean;
          const entered = enteredEnrolment(settings, { client, program, start });
          const said = messages.client.enrolment({
            program,
            start: start === null ? null : formatters.date(start),
            end: end === null ? null : formatters.date(end),
            reason: endReason === null ? null : messages.client.endReason({ code: endReason }),
          });
          const facts = [
            ...(end === null ? [words.open] : []),
            ...(weightIntended === null ? [] : [words.intended[weightIntended]]),
            ...(leanMeant === undefined || leanMeant === null
              ? []
              : [words.leanIntended[leanMeant]({ value: valueWords(cohort.lean).name })]),
            ...(entered === undefined ? [] : [words.entered]),
          ];
          return (
            <li key={keyOf(enrolment)}>
              <p>
                <bdi>{said}</bdi> <span className="quiet small">{facts.join(' · ')}</span>
              </p>
              {open === keyOf(enrolment) ? (
                <EndForm
                  program={program}
                  start={start}
                  busy={acting.busy}
                  onCancel={close}
                  onSave={(day, reason) => {
                    enter(enrolment, day, reason);
                  }}
                />
              ) : (
                <div className="row">
                  {end === null ? (
                    <button
                      type="button"
                      className="button"
                      aria-label={words.endOf({ program })}
                      disabled={!keeping.writer}
                      onClick={() => {
                        setOpen(keyOf(enrolment));
                      }}
                    >
                      {words.end}
                    </button>
                  ) : null}
                  {entered === undefined ? null : (
                    <button
                      type="button"
                      className="button"
                      aria-label={words.takeBackOf({ program })}
                      disabled={!keeping.writer || acting.busy}
                      onClick={() => {
                        save(withoutEnrolment(settings, entered));
                      }}
                    >
                      {words.takeBack}
                    </button>
                  )}
                </div>
              )}
            </li>
          );
        })}
        {ahead.map((entry) => (
          <li key={`${entry.program} ${entry.start ?? ''}`}>
            <p>
              <bdi>
                {messages.client.enrolment({
                  program: entry.program,
                  start: entry.start === null ? null : formatters.date(entry.start as IsoDate),
                  end: null,
                  reason: null,
                })}
              </bdi>{' '}
              <span className="quiet small">{words.ahead}</span>
            </p>
            <button
              type="button"
              className="button"
              aria-label={words.takeBackOf({ program: entry.program })}
              disabled={!keeping.writer || acting.busy}
              onClick={() => {
                save(withoutEnrolment(settings, entry));
              }}
            >
              {words.takeBack}
            </button>
          </li>
        ))}
      </ul>
      {open === ADDING ? (
        <EnrolForm
          programs={offered}
          busy={acting.busy}
          isTaken={(program, start) => enrolments.some((one) => one.program === program && one.start === start)}
          onCancel={close}
          onSave={(program, start) => {
            enter({ program, start }, null, null);
          }}
        />
      ) : (
        <button
          type="button"
          className="button"
          disabled={!keeping.writer || offered.length === 0}
          onClick={() => {
            setOpen(ADDING);
          }}
        >
          {words.add}
        </button>
      )}
      <ActNote acting={acting} />
    </section>
  );
};
