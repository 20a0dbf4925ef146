import { defineConfig } from '@playwright/test';
import { findChromium } from './lib/cli/site/find-chromium';

const browser = await findChromium();
if (!browser.ok) throw new Error(`${browser.error.message} ${browser.error.remedy}`);

const port = process.env.TEST_PORT ?? '4173';
const address = `http://127.0.0.1:${port}`;

export default defineConfig({
  testDir: 'tests/e2e',
  testMatch: '**/*.spec.ts',
  outputDir: 'test-results',
  workers: 2,
  retries: 0,
  fullyParallel: false,
  forbidOnly: true,
  timeout: 60_000,
  reporter: 'list',
  use: {
    baseURL: address,
    locale: 'en-GB',
    timezoneId: 'Europe/London',
    viewport: { width: 1440, height: 900 },
    launchOptions: {
      executablePath: browser.value.path,
      args: [
        '--no-sandbox',
        '--disable-background-networking',
        '--disable-component-update',
        '--no-first-run',
        // Every test starts the database anew: compiling it a second time for speed costs more than it brings, 8 s of work a start.
        '--js-flags=--wasm-tier-up-filter=0',
        // The address bar's own pages would be started with every window: 3 s of work.
        '--disable-features=WebUIOmniboxPopup,WebUIOmniboxAimPopup,WebUIOmniboxFullPopup,OmniboxAimPopup,AiModeOmniboxEntryPoint,WebUIReloadButton,InitialWebUI',
      ],
    },
  },
  webServer: {
    command: 'npm --silent start',
    env: { PORT: port },
    url: `${address}/`,
    reuseExistingServer: process.env.CI === undefined,
    timeout: 300_000,
    stdout: 'ignore',
    stderr: 'pipe',
    gracefulShutdown: { signal: 'SIGTERM', timeout: 5_000 },
  },
});
