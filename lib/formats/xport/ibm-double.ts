const SIGN = 0x80;
const BIAS = 64;

/** Whether eight bytes are one of the 28 missing values: `.`, `._` or `.A` to `.Z`, the other bytes zero. */
const isMissing = (bytes: Uint8Array): boolean => {
  const [first = 0, ...rest] = bytes;
  const isSign = first === 0x2e || first === 0x5f || (first >= 0x41 && first <= 0x5a);
  return isSign && rest.every((byte) => byte === 0);
};

/**
 * A number in IBM System/360 hexadecimal floating point: a sign bit, seven bits of exponent to the base 16 with an
 * excess of 64, a fraction of up to 56 bits; shorter ones (2 to 7 bytes) are filled up with zeros. null = missing.
 *
 * Source: SAS technical paper TS-140, record layout of a data set in transport format (version 5 and 6), “Numeric data”.
 */
export const ibmDouble = (bytes: Uint8Array): number | null => {
  if (isMissing(bytes)) return null;
  let fraction = 0;
  let scale = 1;
  for (const byte of bytes.subarray(1)) {
    scale /= 256;
    fraction += byte * scale;
  }
  if (fraction === 0) return 0;
  const first = bytes[0] ?? 0;
  const size = fraction * 16 ** ((first & ~SIGN) - BIAS);
  return first & SIGN ? -size : size;
};
