const LONG_DECIMALS = /^-?\d+\.\d{3,}$/;

/** A converted number as it is shown while one looks at the columns: two decimals; any other text as it is. */
export const shortenedNumber = (text: string): string => (LONG_DECIMALS.test(text) ? Number(text).toFixed(2) : text);
