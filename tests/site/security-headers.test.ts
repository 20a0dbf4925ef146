import { describe, expect, test } from 'vitest';
import { cspHash, inlineScriptHashes } from '../../lib/cli/site/inline-script-hashes';
import { securityHeaders } from '../../lib/cli/site/security-headers';

// A published pair of script and hash: MDN, manifest key "content_security_policy", the example that allows an inline script.
const exampleScript = "alert('Hello, world.');";
const exampleHash = 'sha256-qznLcsROx4GACP2dm0UCKCzCG+HiZ1guq6ZZDob/Tng=';

const directive = (name: string): string => {
  const policy = securityHeaders([exampleHash], ['sha256-style'])[0]?.[1] ?? '';
  return policy.split('; ').find((part) => part.startsWith(`${name} `)) ?? '';
};

describe('the hash of an inline script', () => {
  test("is the one of the standard's example", () => {
    expect(cspHash(exampleScript)).toBe(exampleHash);
  });

  test('is taken of the exact text between the tags, attributes or not', () => {
    const html = `<script>${exampleScript}</script><script id="x" type="module">${exampleScript} </script>`;
    expect(inlineScriptHashes([html])).toEqual([exampleHash, cspHash(`${exampleScript} `)].sort());
  });

  test('is not made for a script that has a source', () => {
    expect(inlineScriptHashes(['<script src="/theme.js"></script><script async SRC="/b.js"></script>'])).toEqual([]);
  });

  test('is made for a script whose data attribute only sounds like a source', () => {
    expect(inlineScriptHashes([`<script data-src="/b.js">${exampleScript}</script>`])).toEqual([exampleHash]);
  });

  test('stands once however many pages hold the script', () => {
    const page = `<p>a</p><script>${exampleScript}</script>`;
    expect(inlineScriptHashes([page, page])).toEqual([exampleHash]);
  });
});

describe('the policy', () => {
  test('lets scripts run from the own origin and by hash, and WebAssembly compile', () => {
    expect(directive('script-src')).toBe(`script-src 'self' 'wasm-unsafe-eval' '${exampleHash}'`);
  });

  test('lets styles apply from the own origin and by hash', () => {
    expect(directive('style-src')).toBe("style-src 'self' 'sha256-style'");
  });

  test.each(['default-src', 'connect-src', 'worker-src', 'font-src'])('keeps %s to the own origin', (name) => {
    expect(directive(name)).toBe(`${name} 'self'`);
  });

  test.each(['object-src', 'base-uri', 'form-action', 'frame-ancestors'])('forbids %s', (name) => {
    expect(directive(name)).toBe(`${name} 'none'`);
  });

  test('names no other host, no wildcard and nothing unsafe but the compilation of WebAssembly', () => {
    const [, policy = ''] = securityHeaders([], [])[0] ?? [];
    expect(policy.replace("'wasm-unsafe-eval'", '')).not.toMatch(/unsafe|\*|https?:|\/\//);
  });

  test('comes with the headers that isolate the page and hide where it is', () => {
    expect(Object.fromEntries(securityHeaders([], []).slice(1, 6))).toEqual({
      'Cross-Origin-Opener-Policy': 'same-origin',
      'Cross-Origin-Embedder-Policy': 'require-corp',
      'Cross-Origin-Resource-Policy': 'same-origin',
      'X-Content-Type-Options': 'nosniff',
      'Referrer-Policy': 'no-referrer',
    });
  });

  test('denies camera, microphone and place', () => {
    const permissions = Object.fromEntries(securityHeaders([], []))['Permissions-Policy'];
    for (const feature of ['camera', 'microphone', 'geolocation']) expect(permissions).toContain(`${feature}=()`);
  });
});
