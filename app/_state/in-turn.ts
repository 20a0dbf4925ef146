let last: Promise<unknown> = Promise.resolve();

/** Runs one action after the other: two at once would rebuild the database under each other. */
export const inTurn = <T>(action: () => Promise<T>): Promise<T> => {
  const turn = last.then(action, action);
  last = turn.catch(() => undefined);
  return turn;
};
