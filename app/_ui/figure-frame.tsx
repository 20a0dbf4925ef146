'use client';

import { useId, type ReactNode } from 'react';
import { drawFramed } from '../../lib/figures/draw-frame';
import type { FigureFrame as Frame } from '../../lib/figures/figure-frame';
import type { FigureTable } from '../../lib/figures/figure-table';
import { lightTheme, screenTheme, type FigureTheme } from '../../lib/figures/figure-theme';
import { serializeSvg } from '../../lib/figures/serialize-svg';
import type { SvgNode } from '../../lib/figures/svg-node';
import type { TableFact } from '../../lib/workspace/table-file';
import { useMessages } from '../_state/language-provider';
import { useSession } from '../_state/workspace-provider';
import styles from './figure-frame.module.css';
import { FigureTableView } from './figure-table-view';
import { SvgFigure } from './svg-figure';
import { usePoints } from './use-points';
import { useSaveFile } from './use-save-file';

interface FigureFrameProps {
  readonly frame: Frame;
  /** The drawing under a theme; the same draws on screen and in the file. */
  readonly draw: (theme: FigureTheme) => SvgNode;
  /** Text alternative: what the figure shows, in a sentence or two. */
  readonly alternative: string;
  readonly table: FigureTable;
  /** What the table's file says of every row. */
  readonly facts?: readonly TableFact[];
  /** What the figure is, kebab-case, without an identity. */
  readonly fileName: string;
  /** `2` under a heading of the screen, `3` inside a section. */
  readonly headingLevel?: 2 | 3;
  /** Enter or a click on a point. */
  readonly onOpenPoint?: (key: string) => void;
  /** The point that has the focus or the pointer; undefined when none has. */
  readonly onActivePoint?: (key: string | undefined) => void;
  /** Between the subtitle and the drawing. */
  readonly children?: ReactNode;
}

/** A figure with its title, subtitle, caption, words, the table behind it, and the way to take it along. */
export const FigureFrame = (props: FigureFrameProps) => {
  const {
    frame,
    draw,
    alternative,
    table,
    facts,
    fileName,
    headingLevel = 2,
    onOpenPoint,
    onActivePoint,
    children,
  } = props;
  const messages = useMessages();
  const { dataVersion, corrections, setAside } = useSession();
  const { saveFile } = useSaveFile();
  const changed = messages.shell.changedByPeople({ corrections: corrections.length, setAside: setAside.length });
  const framed = changed === '' ? frame : { ...frame, caption: `${frame.caption} ${changed}.` };
  const titleId = useId();
  const hintId = useId();
  const drawing = draw(screenTheme);
  const stage = usePoints({ onOpen: onOpenPoint, onActive: onActivePoint }, drawing);
  const Heading = headingLevel === 2 ? 'h2' : 'h3';

  const save = (): void => {
    const text = serializeSvg(drawFramed(draw(lightTheme), framed, lightTheme), {
      title: frame.title,
      description: alternative,
    });
    const name = `driftline-${fileName}-${dataVersion}.svg`;
    saveFile('figure', { name, mediaType: 'image/svg+xml', text }, table.rows.length);
  };

  return (
    <figure className={styles.figure} aria-labelledby={titleId}>
      <Heading id={titleId} className={styles.title}>
        {frame.title}
      </Heading>
      <p className={styles.subtitle}>{frame.subtitle}</p>
      {children}
      <div ref={stage} className={styles.stage} role="group" aria-labelledby={titleId} aria-describedby={hintId}>
        <SvgFigure drawing={drawing} label={alternative} />
      </div>
      <span id={hintId} className="visually-hidden">
        {messages.table.pointsHint}
      </span>
      <figcaption className={styles.caption}>{framed.caption}</figcaption>
      <details className={styles.behind}>
        <summary>{messages.table.behind}</summary>
        <p className={styles.words}>{alternative}</p>
        <FigureTableView table={table} labelledBy={titleId} fileName={fileName} facts={facts} />
      </details>
      <button type="button" className={`button ${styles.save ?? ''}`} onClick={save}>
        {messages.table.saveFigure}
      </button>
    </figure>
  );
};
