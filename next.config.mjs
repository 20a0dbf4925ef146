/** @type {import('next').NextConfig} */
const nextConfig = {
  output: 'export',
  // A folder with index.html per route: every file server resolves it without a rewrite rule.
  trailingSlash: true,
  images: { unoptimized: true },
  // The same inputs give the same addresses and script hashes, on any machine.
  generateBuildId: () => process.env.SITE_BUILD_ID ?? 'unnamed',
  poweredByHeader: false,
  reactStrictMode: true,
  devIndicators: false,
  // "npm run types" checks the whole project, tests included; a person's first start need not wait for that.
  turbopack: { resolveAlias: { '@stdlib/assert-has-generator-support': './lib/stats/has-generator-support.cjs' } },
  typescript: { ignoreBuildErrors: true },
};

export default nextConfig;
