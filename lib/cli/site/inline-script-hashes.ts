import { createHash } from 'node:crypto';

const scriptElement = /<script\b([^>]*)>([\s\S]*?)<\/script>/gi;
const hasSource = /\ssrc\s*=/i;

/** A source expression of the Content Security Policy Level 3 for exactly this text: `sha256-<base64>`. */
export const cspHash = (text: string): string => `sha256-${createHash('sha256').update(text, 'utf8').digest('base64')}`;

/** The policy hashes of every script that stands inside these HTML documents, each once, sorted. */
export const inlineScriptHashes = (documents: readonly string[]): readonly string[] => {
  const hashes = new Set<string>();
  for (const html of documents)
    for (const [, attributes = '', text = ''] of html.matchAll(scriptElement))
      if (!hasSource.test(attributes)) hashes.add(cspHash(text));
  return [...hashes].sort();
};
