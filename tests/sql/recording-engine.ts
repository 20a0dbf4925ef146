import type { Engine } from '../../lib/engine/types';

/** An engine that notes every text it is given. */
export const recordingEngine = (engine: Engine): { readonly engine: Engine; readonly texts: ReadonlySet<string> } => {
  const texts = new Set<string>();
  return {
    texts,
    engine: {
      ...engine,
      run: (sql) => {
        texts.add(sql);
        return engine.run(sql);
      },
      query: (sql, signal) => {
        texts.add(sql);
        return engine.query(sql, signal);
      },
    },
  };
};
