import { hmac } from '@noble/hashes/hmac.js';
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import type { ClinicBody, Tombstone } from './clinic-state';

const bytesOf = (base64: string): Uint8Array => Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0));

/** HMAC-SHA-256 (RFC 2104, FIPS 198-1) of an id under a base64 key, lower-case hexadecimal. */
export const tombstoneHash = (key: string, clientId: string): string =>
  bytesToHex(hmac(sha256, bytesOf(key), utf8ToBytes(clientId)));

/** Who was erased from a clinic; null where nobody was. The ids themselves are not kept. */
export const erasedPeople = (
  body: Pick<ClinicBody, 'tombstones' | 'tombstoneKey'>,
): { isErased(clientId: string): boolean } | null => {
  if (body.tombstones.length === 0) return null;
  const byKey = new Map<string, Set<string>>();
  for (const { key = body.tombstoneKey, hmac: hash } of body.tombstones) {
    byKey.set(key, (byKey.get(key) ?? new Set()).add(hash));
  }
  const known = new Map<string, boolean>();
  return {
    isErased: (clientId) => {
      const before = known.get(clientId);
      if (before !== undefined) return before;
      const erased = [...byKey].some(([key, hashes]) => hashes.has(tombstoneHash(key, clientId)));
      known.set(clientId, erased);
      return erased;
    },
  };
};

/** The tombstones of both: those of another clinic's file keep the key that they were hashed with. */
export const tombstoneUnion = (
  mine: Pick<ClinicBody, 'tombstones' | 'tombstoneKey'>,
  theirs: Pick<ClinicBody, 'tombstones' | 'tombstoneKey'>,
): readonly Tombstone[] => {
  const whose = (stone: Tombstone, key: string): string => `${stone.key ?? key} ${stone.hmac}`;
  const known = new Set(mine.tombstones.map((stone) => whose(stone, mine.tombstoneKey)));
  const fresh = theirs.tombstones.filter((stone) => !known.has(whose(stone, theirs.tombstoneKey)));
  return [
    ...mine.tombstones,
    ...fresh.map((stone) => {
      const key = stone.key ?? theirs.tombstoneKey;
      const { key: _, ...rest } = stone;
      return key === mine.tombstoneKey ? rest : { ...rest, key };
    }),
  ];
};
