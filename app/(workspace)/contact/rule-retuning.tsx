'use client';

import type { ContactSettings, TalkToRule } from '../../../lib/cohort/settings-parts/contact-settings';
import type { TalkToRow } from '../../../lib/cohort/types/contact-lists';
import type { RuleYield } from '../../../lib/workspace/contact-calls';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { useActing } from '../../_state/use-acting';
import { useSession } from '../../_state/workspace-provider';
import { ActNote } from '../../_ui/act-note';
import styles from './rule-yield.module.css';

const NEAR_STEP = 0.15;
const NEAR_MOST = 2;

interface RuleRetuningProps {
  readonly yields: readonly RuleYield[];
  /** The present list, for what an offer would change on it. */
  readonly rows: readonly TalkToRow[];
}

const onlyBy = (rule: TalkToRule, { reasons }: TalkToRow): boolean => reasons.every((reason) => reason.rule === rule);

/** Whether a row rests on one sight of a change that lies under so many times its error. */
const isNearer = (row: TalkToRow, factor: number): boolean =>
  onlyBy('lean-change', row) &&
  row.reasons.some(
    (reason) =>
      reason.rule === 'lean-change' && reason.sight === 'first' && Math.abs(reason.excess) < factor * reason.lsc,
  );

/** Other settings for a rule that is mostly not useful, and the way back to a rule that is off. Nothing changes by itself. */
export const RuleRetuning = ({ yields, rows }: RuleRetuningProps) => {
  const words = useMessages().contact;
  const formatters = useFormatters();
  const { settings, keeping } = useSession();
  const acting = useActing();
  const { contacts } = settings;
  const save = (next: Partial<ContactSettings>) => (): void => {
    void acting.start(
      (workspace) => workspace.saveSettings({ ...settings, contacts: { ...contacts, ...next } }),
      words.retuned,
    );
  };
  const disabled = acting.busy || !keeping.writer;
  const nearer = Math.round((contacts.nearFactor + NEAR_STEP) * 100) / 100;
  const isOff = (rule: TalkToRule): boolean => contacts.rulesOff.includes(rule);
  return (
    <div className="no-print">
      {yields
        .filter((one) => one.mostlyNotUseful && !isOff(one.rule))
        .map(({ rule, called, outcomes }) => (
          <div key={rule} className={styles.offer}>
            <p>
              {words.retune({
                rule: words.rules[rule],
                n: outcomes['not-useful'],
                of: called - outcomes['not-reached'],
              })}
            </p>
            <p className="quiet small">
              {words.switchTakes({ n: rows.filter((row) => onlyBy(rule, row)).length })}
              {rule === 'lean-change' && nearer <= NEAR_MOST
                ? ` ${words.raiseMoves({
                    percent: formatters.percent(nearer),
                    n: rows.filter((row) => isNearer(row, nearer)).length,
                  })}`
                : ''}
            </p>
            {rule === 'lean-change' && nearer <= NEAR_MOST ? (
              <button type="button" className="button" disabled={disabled} onClick={save({ nearFactor: nearer })}>
                {words.raiseNear({ percent: formatters.percent(nearer) })}
              </button>
            ) : null}
            <button
              type="button"
              className="button"
              disabled={disabled}
              onClick={save({ rulesOff: [...contacts.rulesOff, rule] })}
            >
              {words.switchOff({ rule: words.rules[rule] })}
            </button>
          </div>
        ))}
      {contacts.rulesOff.map((rule) => (
        <div key={rule} className={styles.offer}>
          <p>{words.ruleOff({ rule: words.rules[rule] })}</p>
          <button
            type="button"
            className="button"
            disabled={disabled}
            onClick={save({ rulesOff: contacts.rulesOff.filter((other) => other !== rule) })}
          >
            {words.switchOn({ rule: words.rules[rule] })}
          </button>
        </div>
      ))}
      <ActNote acting={acting} />
    </div>
  );
};
