/** Whether two plain values (as JSON holds them) say the same; an absent key and an undefined one are equal. */
export const sameValue = (first: unknown, second: unknown): boolean => {
  if (Object.is(first, second)) return true;
  if (typeof first !== 'object' || typeof second !== 'object' || first === null || second === null) return false;
  if (Array.isArray(first) || Array.isArray(second)) {
    return (
      Array.isArray(first) &&
      Array.isArray(second) &&
      first.length === second.length &&
      first.every((item, index) => sameValue(item, second[index]))
    );
  }
  const [one, two] = [first as Record<string, unknown>, second as Record<string, unknown>];
  return [...new Set([...Object.keys(one), ...Object.keys(two)])].every((key) => sameValue(one[key], two[key]));
};
