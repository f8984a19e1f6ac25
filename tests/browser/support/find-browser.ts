import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';

/** Where a Chromium or Chrome usually stands. `DAMLINE_BROWSER` names another. */
const PLACES = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/bin/google-chrome-stable',
  '/opt/google/chrome/chrome',
  '/snap/bin/chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
];

const INSTALL_LINE = 'sudo apt-get update && sudo apt-get install -y chromium';

/** The path of a browser to test in; installs Debian's Chromium where that can be done; else says how to get one. */
export function findBrowser(): string {
  const named = process.env.DAMLINE_BROWSER;
  if (named) {
    if (existsSync(named)) return named;
    throw new Error(`DAMLINE_BROWSER names ${named}, and there is no such file.`);
  }
  const found = PLACES.find((place) => existsSync(place));
  if (found) return found;
  installFromDebian();
  const installed = PLACES.find((place) => existsSync(place));
  if (installed) return installed;
  throw new Error(`The browser tests need Chromium or Chrome. Install one with:\n  ${INSTALL_LINE}`);
}

function installFromDebian(): void {
  if (!existsSync('/usr/bin/apt-get') || process.getuid?.() !== 0) return;
  try {
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
    execFileSync('apt-get', ['update', '-qq'], { stdio: 'inherit', env });
    execFileSync('apt-get', ['install', '-y', '-qq', 'chromium'], { stdio: 'inherit', env });
  } catch {
    // The error that follows says how to install it by hand.
  }
}
