const NUMBER = /^[+-]?\d+(?:\.\d+)?$/;

/** A number as it is typed, with a minus of either kind; undefined for any other text. */
export const typedNumber = (text: string): number | undefined => {
  const plain = text.trim().replace('−', '-');
  return NUMBER.test(plain) ? Number(plain) : undefined;
};
