import type { Condition, Expression } from './expression';

/** A number as a DOUBLE literal that DuckDB and PostgreSQL read alike. */
export const doubleLiteral = (value: number): string => {
  const text = String(value);
  const literal = /e/i.test(text) ? text.toUpperCase() : `${text}E0`;
  return value < 0 ? `(${literal})` : literal;
};

const conditionSql = ({ input, from, below }: Condition): string =>
  [
    `${input} IS NOT NULL`,
    ...(from === undefined ? [] : [`${input} >= ${doubleLiteral(from)}`]),
    ...(below === undefined ? [] : [`${input} < ${doubleLiteral(below)}`]),
  ].join(' AND ');

/**
 * An expression as SQL text of the subset that DuckDB and PostgreSQL share. Columns are named like the inputs and
 * must be DOUBLE PRECISION; an unknown input gives NULL, and so does a division by zero.
 */
export const compileExpression = (expression: Expression): string => {
  switch (expression.op) {
    case 'input':
      return expression.input;
    case 'constant':
      return `CAST(${doubleLiteral(expression.value)} AS DOUBLE PRECISION)`;
    case 'sum':
      return `(${expression.of.map(compileExpression).join(' + ')})`;
    case 'product':
      return `(${expression.of.map(compileExpression).join(' * ')})`;
    case 'difference':
      return `(${compileExpression(expression.minuend)} - ${compileExpression(expression.subtrahend)})`;
    case 'quotient':
      return `(${compileExpression(expression.dividend)} / NULLIF(${compileExpression(expression.divisor)}, 0))`;
    case 'square_root': {
      const inner = compileExpression(expression.of);
      return `(CASE WHEN ${inner} >= 0 THEN SQRT(${inner}) END)`;
    }
    case 'angle_degrees':
      return `(ATAN2(${compileExpression(expression.y)}, ${compileExpression(expression.x)}) * 180E0 / PI())`;
    case 'choose':
      return `(CASE ${expression.cases
        .map(
          ({ when, then }) => `WHEN ${when.map(conditionSql).join(' AND ') || 'TRUE'} THEN ${compileExpression(then)}`,
        )
        .join(' ')} END)`;
  }
};
