import '@fontsource-variable/source-sans-3/wght.css';
import '@fontsource-variable/source-serif-4/wght.css';
import { type Metadata, type Viewport } from 'next';
import { NuqsAdapter } from 'nuqs/adapters/next/app';
import { type ReactNode } from 'react';
import { LanguageProvider } from './_state/language-provider';
import { WorkspaceProvider } from './_state/workspace-provider';
import { Shell } from './_ui/shell';
import './globals.css';

export const metadata: Metadata = {
  title: { default: 'Driftline', template: '%s · Driftline' },
  description: 'Which changes are more than the clinic’s own measurement error.',
  icons: { icon: '/icon.svg' },
};

export const viewport: Viewport = { width: 'device-width', initialScale: 1 };

const RootLayout = ({ children }: { readonly children: ReactNode }) => (
  <html lang="en" suppressHydrationWarning>
    <head>
      {/* Not deferred: a chosen theme has to stand before the first paint. */}
      <script src="/theme.js" />
    </head>
    <body>
      <NuqsAdapter>
        <LanguageProvider>
          <WorkspaceProvider>
            <Shell>{children}</Shell>
          </WorkspaceProvider>
        </LanguageProvider>
      </NuqsAdapter>
    </body>
  </html>
);

export default RootLayout;
