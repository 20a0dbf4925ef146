'use client';

import { useMemo, useState } from 'react';
import type { ClientDetail } from '../../../lib/cohort/types/client-detail';
import type { IndexPoint } from '../../../lib/cohort/types/cohort-summary';
import { describeIndexChart, tableIndexChart } from '../../../lib/figures/index-chart/describe';
import { drawIndexChart } from '../../../lib/figures/index-chart/draw';
import { buildIndexChart } from '../../../lib/figures/index-chart/spec';
import { citationLine } from '../../../lib/measures/citation';
import { useEquationShare } from '../../_state/use-equation-share';
import { useValueFacts } from '../../_state/use-value-facts';
import { valueMark } from '../../_state/value-mark';
import { useSession } from '../../_state/workspace-provider';
import { EquationShare } from '../../_ui/equation-share';
import { DataTable } from '../../_ui/data-table';
import { FigureFrame } from '../../_ui/figure-frame';
import { LinkedPoints } from '../../_ui/linked-points';
import { rowNameHandlers } from '../../_ui/row-name';
import { BesideCounts } from '../../_ui/beside-counts';
import { Sentence } from '../../_ui/sentence';
import { useFigureContext } from '../../_ui/use-figure-context';
import { useOpenPath } from '../../_ui/use-open-path';
import { indexGroupColumns, indexPointColumns } from './index-columns';
import { useWording } from '../contact/use-wording';
import { clientIndexPath, type ClientIndexPath } from './client-index-path';
import { indexFinding } from './index-finding';
import { indexGroups } from './index-groups';
import { indicesFigure } from './indices-figure';
import styles from './indices-screen.module.css';
import { pathFinding } from './path-finding';

const NO_PATH: ClientIndexPath['path'] = [];

interface IndicesViewProps {
  readonly points: readonly IndexPoint[];
  readonly client: ClientDetail | undefined;
  readonly onClear: () => void;
}

/** The finding, the chart, the programs beside it and every point below; chart and tables are linked. */
export const IndicesView = ({ points, client, onClear }: IndicesViewProps) => {
  const wording = useWording();
  const { messages, formatters } = wording;
  const {
    indices: words,
    methods: { mark: marks },
    clientVector: { index: pathWords },
  } = messages;
  const { cohort } = useSession();
  const { summary } = cohort;
  const equation = cohort.catalogue.equations.ffm;
  const share = useEquationShare('ffmi');
  const facts = [...useValueFacts('ffmi', 'fmi'), ...(share?.facts ?? [])];
  const openPath = useOpenPath();
  const context = useFigureContext({ width: 760, height: 580 });
  const [program, setProgram] = useState<string | undefined>(undefined);
  const [row, setRow] = useState<string | undefined>(undefined);
  const [pointed, setPointed] = useState<string | undefined>(undefined);
  const names = useMemo(() => summary.programs.map(({ name }) => name), [summary]);
  const shown = useMemo(
    () => (client === undefined ? undefined : clientIndexPath(client, cohort.guards, words, formatters)),
    [client, cohort, words, formatters],
  );
  const path = shown?.path ?? NO_PATH;
  const spec = useMemo(
    () => buildIndexChart(indicesFigure(points, names, path, words, formatters), context),
    [points, names, path, words, formatters, context],
  );
  const groups = useMemo(() => indexGroups(points, names), [points, names]);
  const columns = useMemo(() => ({ groups: indexGroupColumns(words), points: indexPointColumns(words) }), [words]);
  const linked = useMemo(() => {
    if (row !== undefined) return new Set([row]);
    if (program === undefined) return undefined;
    return new Set(points.filter((point) => point.program === program).map((point) => String(point.clientKey)));
  }, [row, program, points]);
  const held = points.filter((point) => point.held).length;
  const pointedProgram = points.find((point) => String(point.clientKey) === pointed)?.program;
  const level = summary.posture === 'lying' ? words.levels : words.forChange;
  const clear =
    client === undefined ? undefined : (
      <button type="button" className="button" onClick={onClear}>
        {words.clearPath}
      </button>
    );

  return (
    <div className={styles.screen}>
      <Sentence
        detail={
          <>
            <p>{level}</p>
            <BesideCounts />
          </>
        }
        actions={clear}
      >
        {client === undefined ? indexFinding(points, words) : pathFinding(client, wording, 'named')}
      </Sentence>
      <div className="split">
        <div className="sheet">
          <LinkedPoints keys={linked}>
            <FigureFrame
              frame={{
                title: words.figureTitle,
                subtitle: words.lead,
                caption: [
                  words.equation({
                    name: equation.name,
                    source: citationLine(equation.citation),
                    mark: valueMark(cohort.catalogue.measure('ffmi'), marks) ?? null,
                  }),
                  ...(share === undefined ? [] : [share.sentence]),
                  level,
                  ...(held === 0 ? [] : [words.heldNote({ n: held })]),
                  ...(path.length === 0 ? [] : [words.path({ n: path.length })]),
                  ...(shown === undefined || shown.stopped === 0 ? [] : [pathWords.stopped({ n: shown.stopped })]),
                  ...(shown?.held === true ? [pathWords.held] : []),
                ].join(' '),
              }}
              draw={(theme) => drawIndexChart(spec, theme)}
              alternative={describeIndexChart(spec, context.words)}
              table={tableIndexChart(spec, context)}
              fileName="indices"
              facts={facts}
              onOpenPoint={(key) => {
                if (/^\d+$/.test(key)) openPath(`/client/?c=${key}`);
              }}
              onActivePoint={setPointed}
            />
          </LinkedPoints>
        </div>
        <div {...rowNameHandlers(setProgram)}>
          <DataTable
            caption={words.groups.title}
            rows={groups}
            columns={columns.groups}
            rowKey={(group) => group.program}
            fileName={words.groups.fileName}
            facts={facts}
            rowsWord={words.groups.rowsWord}
            isMarked={(group) => group.program === pointedProgram}
          />
          <p className={styles.notes}>{words.groups.note}</p>
        </div>
      </div>
      <div className="sheet no-print" {...rowNameHandlers(setRow)}>
        <DataTable
          caption={words.points.title}
          rows={points}
          columns={columns.points}
          rowKey={(point) => String(point.clientKey)}
          href={(point) => `/client/?c=${point.clientKey}`}
          fileName={words.points.fileName}
          facts={facts}
          rowsWord={words.points.rowsWord}
          searchLabel={words.points.search}
          isMarked={(point) => String(point.clientKey) === pointed}
        />
      </div>
      <EquationShare share={share} />
    </div>
  );
};
