import type { Column } from './column';

const TIME_SHAPES = ['_:__', '__:__', '_:__:__', '__:__:__'];

/**
 * SQL of a cell's text as its column's type, NULL where it cannot be read. Narrower than the engine's casts, which also
 * take `1_000`, `0x1F`, `+-5`, `2025-03-4x` or `08:3`: what a person may have meant otherwise is not guessed.
 */
export const typedExpression = (column: Column, table = ''): string => {
  const name = `${table}${column.name}`;
  switch (column.type) {
    case 'text':
      return name;
    case 'date':
      return `CASE WHEN ${name} LIKE '____-__-__' AND ${name} >= '1800' AND CAST(TRY_CAST(${name} AS DATE) AS VARCHAR) = ${name}
  THEN TRY_CAST(${name} AS DATE) END`;
    case 'time':
      return `CASE WHEN (${TIME_SHAPES.map((shape) => `${name} LIKE '${shape}'`).join(' OR ')})
  AND TRY_CAST(${name} AS TIME) < TIME '24:00' THEN SUBSTR(CAST(TRY_CAST(${name} AS TIME) AS VARCHAR), 1, 5) END`;
    case 'integer':
      return `CASE WHEN LENGTH(${name}) <= 4 AND TRANSLATE(${name}, '0123456789', '') = '' THEN TRY_CAST(${name} AS INTEGER) END`;
    case 'number':
      return `CASE WHEN ISFINITE(TRY_CAST(${name} AS DOUBLE)) AND NOT CONTAINS(${name}, '_') AND NOT STARTS_WITH(${name}, '+-')
  THEN TRY_CAST(${name} AS DOUBLE) END`;
    case 'flag':
      return `CASE LOWER(${name}) WHEN 'y' THEN 1 WHEN 'n' THEN 0 END`;
    case 'choice':
      return `CASE ${(column.choices ?? [])
        .map((choice) => `WHEN LOWER(${name}) = '${choice.toLowerCase()}' THEN '${choice}'`)
        .join(' ')} END`;
  }
};
