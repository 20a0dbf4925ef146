const TABLE = Uint32Array.from({ length: 256 }, (_, index) => {
  let value = index;
  for (let bit = 0; bit < 8; bit += 1) value = value & 1 ? 0xedb88320 ^ (value >>> 1) : value >>> 1;
  return value;
});

/** The check sum of ZIP members, continued from `before` (0 = none). Source: ISO 3309, reflected polynomial EDB88320. */
export const crc32 = (bytes: Uint8Array, before = 0): number => {
  let value = ~before;
  for (const byte of bytes) value = (TABLE[(value ^ byte) & 0xff] ?? 0) ^ (value >>> 8);
  return ~value >>> 0;
};
