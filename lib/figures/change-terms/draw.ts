import { scaleLinear } from 'd3';
import { columnWidth } from '../column-width';
import { drawMessage, figureRoot } from '../figure-root';
import type { FigureTheme } from '../figure-theme';
import { centredBaseline, drawLabel, STRONG_SIZE } from '../label';
import { focusable } from '../mark';
import { svgNode, type SvgNode } from '../svg-node';
import { fitText } from '../wrap-text';
import type { ChangeTerm, ChangeTermsSpec } from './spec';

const ROW = 26;
const BAR = 14;

/** Draws the spec: names left, numbers right, bars from zero between them, the change under a rule. */
export const drawChangeTerms = (spec: ChangeTermsSpec, theme: FigureTheme): SvgNode => {
  const rows = [...spec.terms, spec.change];
  const height = 10 + Math.max(rows.length, 2) * ROW + 8;
  if (spec.message !== undefined)
    return figureRoot('change-terms', spec.width, height, theme, [
      drawMessage(spec.message, spec.width / 2, height / 2, theme),
    ]);
  const names = columnWidth(
    rows.map((row) => row.label),
    STRONG_SIZE,
    'strong',
    spec.width * 0.4,
  );
  const numbers = columnWidth(
    rows.map((row) => row.valueLabel),
    STRONG_SIZE,
    'strong',
    spec.width * 0.3,
  );
  const scale = scaleLinear()
    .domain(spec.domain)
    .range([names + 14, spec.width - numbers - 14]);
  const zero = scale(0);
  const ruleY = 6 + spec.terms.length * ROW + 3;
  const drawRow = (term: ChangeTerm, index: number): SvgNode => {
    const total = term === spec.change;
    const y = 6 + (index + 0.5) * ROW + (total ? 6 : 0);
    const weight = total ? 'strong' : 'regular';
    const end = scale(term.value);
    const text = { y: centredBaseline(y, STRONG_SIZE), size: STRONG_SIZE, weight, fill: theme.ink } as const;
    return focusable(term.key, `${term.label} ${term.valueLabel}`, [
      drawLabel({ ...text, text: fitText(term.label, names + 1, STRONG_SIZE, weight), x: 0 }),
      svgNode('rect', {
        class: 'mark',
        x: Math.min(zero, end),
        y: y - BAR / 2,
        width: Math.abs(end - zero),
        height: BAR,
        fill: total ? theme.ink : theme.inkSecond,
      }),
      drawLabel({ ...text, text: term.valueLabel, x: spec.width, anchor: 'end' }),
    ]);
  };
  return figureRoot('change-terms', spec.width, height, theme, [
    svgNode('line', {
      class: 'zero',
      x1: zero,
      x2: zero,
      y1: 4,
      y2: height - 4,
      stroke: theme.inkSecond,
      'stroke-width': 0.8,
    }),
    ...rows.map(drawRow),
    svgNode('line', { x1: 0, x2: spec.width, y1: ruleY, y2: ruleY, stroke: theme.hair }),
  ]);
};
