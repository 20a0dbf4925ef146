'use client';

import { useMessages } from '../_state/language-provider';
import { useSession } from '../_state/workspace-provider';

/** Beside the counts of a screen: how many readings of the clinic are in none of them; nothing where there are none. */
export const SetAsideNote = () => {
  const { shell } = useMessages();
  const { setAside } = useSession();
  return setAside.length === 0 ? null : <p>{shell.leftOut({ setAside: setAside.length })}</p>;
};
