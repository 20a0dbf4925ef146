'use client';

import type { ClientDetail } from '../../../lib/cohort/types/client-detail';
import type { MeasureId } from '../../../lib/measures/measure-id';
import { sameChangeAs } from '../../../lib/measures/same-change';
import { useFilter } from '../../_state/use-filter';
import { ResultMark } from '../../_ui/result-mark';
import { useWording } from '../contact/use-wording';
import { ClientConfidence } from './client-confidence';
import { ClientHead } from './client-head';
import { ClientIndexFigure } from './client-index-figure';
import { ClientLanesFigure } from './client-lanes-figure';
import { ClientMissing, ClientNotes } from './client-notes';
import { ClientSplit } from './client-split';
import { ClientTermsFigure } from './client-terms-figure';
import { ClientVectorFigure } from './client-vector-figure';
import { currentChange, judgedMeasure } from '../../../lib/workspace/current-change';
import styles from './file-page.module.css';
import { NextTime } from './next-time';
import { PageActions } from './page-actions';

/** What a file is looked up for; the rest stands on the screen. */
const IN_THE_FILE: readonly MeasureId[] = ['weight', 'waist', 'ffm', 'fm', 'smm', 'phase_angle', 'r_h', 'xc_h'];

/** Values whose parts name the equation of fat-free mass: the index path need not say it again. */
const BY_FFM: readonly MeasureId[] = ['ffm', 'ffmi', 'fm', 'fmi'];

/** Lower than on screen: all has to fit on one page. */
const FIGURE_HEIGHT = 260;

const LatestTable = ({ detail }: { readonly detail: ClientDetail }) => {
  const { messages, formatters, valueWords, lean } = useWording();
  const words = messages.client;
  const ids = new Set<MeasureId>(IN_THE_FILE.map((id) => judgedMeasure(detail, id)));
  const rows = [...ids].flatMap((id) => currentChange(detail, id) ?? []);
  if (rows.length === 0) return null;
  const shown = rows.map((row) => row.measure);
  const same = shown.flatMap((id) => {
    const head = sameChangeAs(id, shown, lean);
    return head === undefined ? [] : [words.sameChangeLine({ value: valueWords(id).title, as: valueWords(head).name })];
  });
  return (
    <div>
      <table className={styles.table}>
        <caption>{messages.clientPages.file.latest}</caption>
        <thead>
          <tr>
            <th scope="col">{words.value}</th>
            <th scope="col" className={styles.number}>
              {words.from}
            </th>
            <th scope="col" className={styles.number}>
              {words.to}
            </th>
            <th scope="col" className={styles.number}>
              {words.change}
            </th>
            <th scope="col" className={styles.number}>
              {words.error}
            </th>
            <th scope="col">{words.result}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => {
            const { title, measure } = valueWords(row.measure);
            const unit = formatters.unit(measure.unit);
            const number = (value: number | null): string =>
              value === null || row.guard === 'stop'
                ? messages.table.empty
                : formatters.value(value, measure.unit, measure.decimals);
            return (
              <tr key={row.measure}>
                <th scope="row">
                  {title}
                  {unit === '' ? '' : `, ${unit}`}
                </th>
                <td className={styles.number}>{number(row.valueFrom)}</td>
                <td className={styles.number}>{number(row.valueTo)}</td>
                <td className={styles.number}>
                  {row.guard === 'stop'
                    ? messages.table.empty
                    : formatters.change(row.change, measure.unit, measure.decimals)}
                </td>
                <td className={styles.number}>{number(row.lsc)}</td>
                <td>
                  <ResultMark result={row.result} otherwise={words.notJudged} />
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
      {same.length === 0 ? null : <p className="quiet small">{same.join(' ')}</p>}
    </div>
  );
};

/** One client on one A4 page, for the file and for professionals. */
export const FilePage = ({ detail }: { readonly detail: ClientDetail }) => {
  const { filter } = useFilter();
  const measure = judgedMeasure(detail, filter.measure);
  const change = currentChange(detail, measure);
  const hasTerms = change !== undefined && change.terms !== null && change.guard !== 'stop';
  return (
    <article className={styles.page}>
      <ClientHead detail={detail} measure={measure} actions={<PageActions clientKey={detail.clientKey} />} />
      <div className={styles.wide}>
        <ClientLanesFigure detail={detail} measure={measure} />
        <div className={styles.stack}>
          {hasTerms ? <ClientTermsFigure change={change} /> : null}
          <ClientConfidence detail={detail} measure={measure} />
        </div>
      </div>
      <div className={styles.three}>
        <ClientVectorFigure detail={detail} height={FIGURE_HEIGHT} />
        <ClientIndexFigure
          detail={detail}
          height={FIGURE_HEIGHT}
          namesEquation={!(hasTerms && BY_FFM.includes(measure))}
        />
        <div className={styles.stack}>
          <ClientSplit detail={detail} />
          <NextTime detail={detail} measure={measure} />
        </div>
      </div>
      <div className={styles.wide}>
        <LatestTable detail={detail} />
        <div className={styles.stack}>
          <ClientNotes detail={detail} measure={measure} />
          <ClientMissing detail={detail} />
        </div>
      </div>
    </article>
  );
};
