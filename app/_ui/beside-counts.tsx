'use client';

import { useMessages } from '../_state/language-provider';
import { useSession } from '../_state/workspace-provider';

/**
 * Beside the counts of a screen, for the whole clinic: how many readings are in none of them, and how much of them rests
 * on a declared procedure; nothing where neither is so.
 */
export const BesideCounts = () => {
  const { shell } = useMessages();
  const { setAside, cohort } = useSession();
  const { byProcedure, visits, pairsBySetting } = cohort.summary;
  return (
    <>
      {setAside.length === 0 ? null : <p>{shell.leftOut({ setAside: setAside.length })}</p>}
      {byProcedure.visits === 0 ? null : (
        <p>{shell.byProcedure({ ...byProcedure, all: visits, comparable: pairsBySetting.strict })}</p>
      )}
    </>
  );
};
