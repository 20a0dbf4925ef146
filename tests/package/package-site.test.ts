import { rmSync } from 'node:fs';
import { strFromU8, unzipSync } from 'fflate';
import { afterAll, describe, expect, test } from 'vitest';
import { headerSnippets } from '../../lib/cli/site/header-snippets';
import { packageSite } from '../../lib/cli/site/package-site';
import { securityHeaders } from '../../lib/cli/site/security-headers';
import { projectRoot } from '../../lib/cli/site/site-paths';
import { thirdPartyNotices } from '../../lib/cli/site/third-party-notices';
import { temporaryFolder } from '../site/temporary-folder';

const headers = securityHeaders(['sha256-abc'], ['sha256-def']);
const out = temporaryFolder({ 'index.html': '<title>Driftline</title>', 'clients/index.html': 'clients' });
const contents = { version: '9.9.9', headers, licence: 'the licence', notices: 'the notices' };

afterAll(() => {
  rmSync(out, { recursive: true });
});

describe('the package', () => {
  const files = unzipSync(packageSite(out, contents));

  test('holds the site, the settings of three servers, instructions and licences in one folder', () => {
    expect(Object.keys(files).sort()).toEqual(
      [
        'LICENSE',
        'READ-ME-FIRST.txt',
        'THIRD-PARTY-NOTICES.txt',
        'servers/apache.conf',
        'servers/nginx.conf',
        'servers/web.config',
        'site/clients/index.html',
        'site/index.html',
      ].map((name) => `driftline-9.9.9/${name}`),
    );
  });

  test('holds the files unchanged', () => {
    const text = (name: string) => strFromU8(files[`driftline-9.9.9/${name}`] ?? new Uint8Array());
    expect(text('site/index.html')).toBe('<title>Driftline</title>');
    expect(text('LICENSE')).toBe('the licence');
    expect(text('READ-ME-FIRST.txt')).toContain('Driftline 9.9.9');
  });

  test('is the same bytes for the same files', () => {
    expect(Buffer.from(packageSite(out, contents)).equals(Buffer.from(packageSite(out, contents)))).toBe(true);
  });
});

describe('the settings of a server', () => {
  const snippets = headerSnippets(headers);

  test.each(Object.keys(snippets))('%s holds every header with its value', (name) => {
    const text = (snippets[name] ?? '').replaceAll('&quot;', '"').replaceAll('&amp;', '&');
    for (const [header, value] of headers) {
      expect(text).toContain(header);
      expect(text).toContain(`"${value}"`);
    }
  });

  test('keeps the markup of web.config whole when a value holds its signs', () => {
    const text = headerSnippets([['X-Signs', '<a href="b">&']])['web.config'] ?? '';
    expect(text).toContain('<add name="X-Signs" value="&lt;a href=&quot;b&quot;&gt;&amp;" />');
  });
});

test('the notices name the engine and the renderer, and no package that is only for development', () => {
  const notices = thirdPartyNotices(projectRoot);
  expect(notices).toMatch(/^@duckdb\/duckdb-wasm 1\.32\.0 \(MIT\)$/m);
  expect(notices).toMatch(/^react-dom \d/m);
  expect(notices).not.toMatch(/^vitest \d/m);
});
