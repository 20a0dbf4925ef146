/** A phrase at the start of a sentence. */
export const capitalised = (text: string): string => text.charAt(0).toLocaleUpperCase() + text.slice(1);
