/** Response headers as name and value, in the order in which they are sent. */
export type HeaderList = readonly (readonly [name: string, value: string])[];

const quoted = (hashes: readonly string[]): string => hashes.map((hash) => ` '${hash}'`).join('');

const deniedFeatures = [
  'accelerometer',

  'camera',
  'display-capture',
  'geolocation',
  'gyroscope',
  'hid',
  'magnetometer',
  'microphone',
  'midi',
  'payment',
  'serial',
  'usb',
];

const contentSecurityPolicy = (scriptHashes: readonly string[], styleHashes: readonly string[]): string =>
  [
    "default-src 'self'",
    `script-src 'self' 'wasm-unsafe-eval'${quoted(scriptHashes)}`,
    `style-src 'self'${quoted(styleHashes)}`,
    "img-src 'self' data: blob:",
    "font-src 'self'",
    "connect-src 'self'",
    "worker-src 'self'",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'none'",
    "frame-ancestors 'none'",
  ].join('; ');

/**
 * The headers of every response of the site, a worker's script included: a worker obeys the policy of its own response.
 * Source: W3C Content Security Policy Level 3, HTML Standard (cross-origin isolation), W3C Permissions Policy.
 *
 * @param scriptHashes policy hashes of the scripts inside the pages
 * @param styleHashes policy hashes of the styles that scripts write into the pages
 */
export const securityHeaders = (scriptHashes: readonly string[], styleHashes: readonly string[]): HeaderList => [
  ['Content-Security-Policy', contentSecurityPolicy(scriptHashes, styleHashes)],
  ['Cross-Origin-Opener-Policy', 'same-origin'],
  ['Cross-Origin-Embedder-Policy', 'require-corp'],
  ['Cross-Origin-Resource-Policy', 'same-origin'],
  ['X-Content-Type-Options', 'nosniff'],
  ['Referrer-Policy', 'no-referrer'],
  ['Permissions-Policy', deniedFeatures.map((feature) => `${feature}=()`).join(', ')],
];
