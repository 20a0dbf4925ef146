import { sha256 } from '../core/sha256';
import type { Engine } from '../engine/types';
import type { ImportInput, JudgeOptions } from './import-input';

/**
 * SHA-256 of all that decides the committed rows: sources, files, mappings, answers, what the clinic laid over them, and
 * the accepted rows themselves, these as their number and a sum of hashes that no order changes.
 */
export const planFingerprint = async (
  engine: Engine,
  inputs: readonly ImportInput[],
  options: JudgeOptions,
): Promise<string> => {
  const { prefix, signal } = options;
  const [accepted] = await engine.query(
    `SELECT COUNT(*) AS n, CAST(BIT_XOR(HASH(row_hash, file_no, line_no, part_no)) AS VARCHAR) AS digest,
  CAST((SELECT COUNT(*) FROM ${prefix}erased) AS INTEGER) AS erased
FROM ${prefix}status WHERE status = 'accepted'`,
    signal,
  );
  const parts = [
    inputs.map(({ source, sha256: hash, mapping, importedOn }) => [source, hash, mapping, importedOn]),
    [options.answers, options.corrections, options.setAside, options.acceptQuestions === true],
    [...(options.ignoredColumns ?? [])].sort(),
    accepted,
  ];
  return sha256(new TextEncoder().encode(JSON.stringify(parts)));
};
