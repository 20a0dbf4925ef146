import { existsSync } from 'node:fs';
import { type AppError } from '../../core/app-error';
import { err, ok, type Result } from '../../core/result';

/** A browser that the tests can drive, and where it came from. */
export interface FoundBrowser {
  readonly path: string;
  readonly source: 'CHROMIUM_PATH' | 'system' | 'playwright' | 'package';
}

/** What the search may look at; a test hands in its own. */
export interface BrowserSearch {
  readonly chromiumPath: string | undefined;
  readonly exists: (path: string) => boolean;
  readonly playwrightPath: () => Promise<string | undefined>;
  readonly packagedPath: () => Promise<string | undefined>;
}

const systemPaths = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/bin/google-chrome-stable',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

const noBrowser: AppError = {
  code: 'browser-not-found',
  message: 'The browser tests need Chromium, and none was found.',
  remedy:
    'Debian: "apt-get install --no-install-recommends chromium". Elsewhere: "npx playwright install chromium", or set CHROMIUM_PATH.',
};

const playwrightPath = async (): Promise<string | undefined> => {
  const { chromium } = await import('playwright');
  return chromium.executablePath();
};

const packagedPath = async (): Promise<string | undefined> => {
  if (process.platform !== 'linux' || process.arch !== 'x64') return undefined;
  // The package unpacks the libraries that a bare machine lacks only when it believes to run there.
  process.env.AWS_LAMBDA_JS_RUNTIME = 'nodejs22.x';
  const { default: packaged } = await import('@sparticuz/chromium');
  return packaged.executablePath();
};

export const defaultSearch: BrowserSearch = {
  chromiumPath: process.env.CHROMIUM_PATH,
  exists: existsSync,
  playwrightPath,
  packagedPath,
};

/**
 * Looks for a Chromium in this order: CHROMIUM_PATH, the system's, Playwright's own download, the one packed in a package.
 *
 * @returns the first that exists; the error `browser-not-found`, or `browser-path-wrong` when CHROMIUM_PATH names no file
 */
export const findChromium = async (search: BrowserSearch = defaultSearch): Promise<Result<FoundBrowser, AppError>> => {
  const { chromiumPath, exists } = search;
  if (chromiumPath !== undefined && chromiumPath !== '') {
    if (exists(chromiumPath)) return ok({ path: chromiumPath, source: 'CHROMIUM_PATH' });
    return err({
      code: 'browser-path-wrong',
      message: `CHROMIUM_PATH is "${chromiumPath}", where there is no file.`,
      remedy: 'Correct CHROMIUM_PATH or leave it out.',
    });
  }
  const system = systemPaths.find(exists);
  if (system !== undefined) return ok({ path: system, source: 'system' });
  const downloaded = await search.playwrightPath();
  if (downloaded !== undefined && exists(downloaded)) return ok({ path: downloaded, source: 'playwright' });
  const packaged = await search.packagedPath();
  if (packaged !== undefined && exists(packaged)) return ok({ path: packaged, source: 'package' });
  return err(noBrowser);
};
