import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { injectedStyleHashes } from '../../lib/cli/site/injected-style-hashes';
import { cspHash } from '../../lib/cli/site/inline-script-hashes';
import { listFiles } from '../../lib/cli/site/list-files';
import { projectRoot } from '../../lib/cli/site/site-paths';

const library = join(projectRoot, 'node_modules/react-aria/dist/private');

const sources = listFiles(library)
  .filter((path) => path.endsWith('.mjs'))
  .map((path) => readFileSync(join(library, path), 'utf8'))
  .filter((text) => /createElement\(["']style["']\)/.test(text));

const injectedText = (source: string): string => {
  const [, template = ''] = /style\.textContent = `([\s\S]*?)`\.trim\(\)/.exec(source) ?? [];
  const attribute = /PRESSABLE_ATTRIBUTE = '([^']+)'/.exec(source)?.[1] ?? '';
  return template.replace(/\$\{[^}]*PRESSABLE_ATTRIBUTE\}/, attribute).trim();
};

test('the policy holds a hash for each style that the installed widget library injects, and no other', () => {
  expect(sources.length).toBe(injectedStyleHashes.length);
  expect(sources.map((source) => cspHash(injectedText(source))).sort()).toEqual([...injectedStyleHashes].sort());
});
