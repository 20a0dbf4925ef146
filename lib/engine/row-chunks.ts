/** Bound values of one prepared statement: enough to spare round trips, few enough for every engine. */
const VALUES_AT_ONCE = 480;

/** Rows in chunks that one prepared INSERT takes. */
export const rowChunks = <T>(rows: readonly T[], columns: number): readonly (readonly T[])[] => {
  const size = Math.max(1, Math.floor(VALUES_AT_ONCE / Math.max(1, columns)));
  return Array.from({ length: Math.ceil(rows.length / size) }, (_, index) =>
    rows.slice(index * size, (index + 1) * size),
  );
};
