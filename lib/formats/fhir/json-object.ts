/** A JSON object whose members are not known yet. */
export type JsonObject = Readonly<Record<string, unknown>>;

export const isObject = (value: unknown): value is JsonObject =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

export const objectAt = (value: unknown, ...path: readonly string[]): JsonObject => {
  let at: unknown = value;
  for (const step of path) at = isObject(at) ? at[step] : undefined;
  return isObject(at) ? at : {};
};

export const textAt = (value: unknown, ...path: readonly string[]): string => {
  const last = path.at(-1) ?? '';
  const found = objectAt(value, ...path.slice(0, -1))[last];
  return typeof found === 'string' ? found : '';
};

export const listAt = (value: unknown, name: string): readonly unknown[] => {
  const found = isObject(value) ? value[name] : undefined;
  return Array.isArray(found) ? (found as unknown[]) : [];
};
