/** SQL of 1/n for a count: PostgreSQL would divide a plain constant by an integer as NUMERIC. */
export const reciprocal = (count: string): string => `1E0 / NULLIF(CAST(${count} AS DOUBLE PRECISION), 0)`;
