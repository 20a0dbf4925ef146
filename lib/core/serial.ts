/** Runs tasks one after the other, whatever becomes of the one before. */
export const createSerial = (): (<T>(task: () => Promise<T>) => Promise<T>) => {
  let last: Promise<unknown> = Promise.resolve();
  return (task) => {
    const next = last.then(task, task);
    last = next.catch(() => undefined);
    return next;
  };
};
