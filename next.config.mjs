/** @type {import('next').NextConfig} */
const nextConfig = {
  output: 'export',
  // A folder with index.html per route: every file server resolves it without a rewrite rule.
  trailingSlash: true,
  images: { unoptimized: true },
  poweredByHeader: false,
  reactStrictMode: true,
  devIndicators: false,
  typescript: { ignoreBuildErrors: false },
};

export default nextConfig;
