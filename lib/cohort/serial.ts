/** Runs tasks one after the other: the filter table holds the values of one question at a time. */
export const createSerial = (): (<T>(task: () => Promise<T>) => Promise<T>) => {
  let last: Promise<unknown> = Promise.resolve();
  return (task) => {
    const next = last.then(task, task);
    last = next.catch(() => undefined);
    return next;
  };
};
