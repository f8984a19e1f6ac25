import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { type PreviewServer, preview } from 'vite';
import { findBrowser } from './find-browser.ts';

const root = resolve(import.meta.dirname, '../../..');

const ARGUMENTS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
  '--disable-quic',
];

const PHONE = { width: 390, height: 844 };
const DESK = { width: 1440, height: 900 };

export interface RunningApp {
  readonly url: string;
  /** A fresh keeper: no records, no cache. */
  newKeeper(options?: { readonly desk?: boolean; readonly dark?: boolean }): Promise<Keeper>;
  close(): Promise<void>;
}

export interface Keeper {
  readonly page: Page;
  readonly context: BrowserContext;
  /** Errors the page has thrown or logged so far; a test ends by expecting none. */
  readonly errors: readonly string[];
  close(): Promise<void>;
}

/** Serves the built app from `dist` (`DAMLINE_DIST` names another folder) on a free port and starts a browser. */
export async function startApp(): Promise<RunningApp> {
  const outDir = process.env.DAMLINE_DIST ?? 'dist';
  if (!existsSync(resolve(root, outDir, 'index.html'))) {
    throw new Error('The browser tests run on the built app. Build it first: npm run build');
  }
  const server: PreviewServer = await preview({
    root,
    build: { outDir },
    logLevel: 'error',
    preview: { port: 0, host: '127.0.0.1', strictPort: false },
  });
  const url = server.resolvedUrls?.local[0];
  if (!url) throw new Error('The built app is served without an address.');
  const browser: Browser = await chromium.launch({ executablePath: findBrowser(), args: ARGUMENTS });
  return {
    url,
    newKeeper: (options = {}) => newKeeper(browser, url, options),
    close: async () => {
      await browser.close();
      await server.close();
    },
  };
}

async function newKeeper(
  browser: Browser,
  url: string,
  { desk = false, dark = false }: { readonly desk?: boolean; readonly dark?: boolean },
): Promise<Keeper> {
  const context = await browser.newContext({
    viewport: desk ? DESK : PHONE,
    colorScheme: dark ? 'dark' : 'light',
    baseURL: url,
    hasTouch: !desk,
    acceptDownloads: true,
  });
  const page = await context.newPage();
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(String(error)));
  page.on('console', (message) => {
    if (message.type() === 'error') errors.push(message.text());
  });
  await page.goto(url);
  return { page, context, errors, close: () => context.close() };
}
