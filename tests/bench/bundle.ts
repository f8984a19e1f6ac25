import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { gzipSync } from 'node:zlib';

/** What the built app weighs: every file by its gzip size, and the JavaScript that the first opening loads. */

/** JavaScript on first load, in bytes after gzip (1 kB is 1000 bytes). */
export const FIRST_LOAD_BUDGET_BYTES = 150_000;
/** The screen that a first opening shows; its chunk is loaded at once although the page imports it later. */
const FIRST_SCREEN = 'yards';
const DIST = join(import.meta.dirname, '../../dist');

export interface FirstLoad {
  /** Paths inside the built folder. */
  readonly chunks: readonly string[];
  readonly gzipBytes: number;
}

/**
 * The scripts of index.html and the chunks of these screens, with all that they import at once. What is imported later is
 * not counted.
 */
export function firstLoad(dist: string, screens: readonly string[] = [FIRST_SCREEN]): FirstLoad {
  const page = readFileSync(join(dist, 'index.html'), 'utf8');
  const scripts = [...page.matchAll(/<(?:script|link)\b[^>]*\b(?:src|href)="([^"]+\.js)"[^>]*>/g)];
  const waiting = [...scripts.map((match) => join(dist, match[1] ?? '')), ...chunksOf(dist, screens)];
  const loaded = new Set<string>();
  for (let file = waiting.pop(); file !== undefined; file = waiting.pop()) {
    if (loaded.has(file) || !existsSync(file)) continue;
    loaded.add(file);
    for (const name of staticImports(readFileSync(file, 'utf8'))) waiting.push(join(dirname(file), name));
  }
  const chunks = [...loaded].sort();
  return {
    chunks: chunks.map((file) => relative(dist, file)),
    gzipBytes: chunks.reduce((sum, file) => sum + gzipSize(file), 0),
  };
}

function chunksOf(dist: string, screens: readonly string[]): string[] {
  const folder = join(dist, 'assets');
  if (!existsSync(folder)) return [];
  return readdirSync(folder)
    .filter((name) => name.endsWith('.js') && screens.some((screen) => name.startsWith(`${screen}-`)))
    .map((name) => join(folder, name));
}

/** Relative paths that a built module imports as soon as it is loaded. */
export function staticImports(code: string): string[] {
  const pattern = /\b(?:import|export)\b\s*(?:[\w$*{}\s,]+\bfrom\s*)?["'](\.{1,2}\/[^"']+)["']/g;
  return [...code.matchAll(pattern)].map((match) => match[1] ?? '');
}

function gzipSize(file: string): number {
  return gzipSync(readFileSync(file), { level: 9 }).length;
}

export function benchBundle(print: (line: string) => void = console.log, dist: string = DIST): void {
  if (!existsSync(join(dist, 'index.html'))) {
    print(`No built app in ${dist}; run: npm run build`);
    return;
  }
  const first = firstLoad(dist);
  const files = readdirSync(dist, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .map((file) => ({ name: relative(dist, file), raw: readFileSync(file).length, gzip: gzipSize(file) }))
    .sort((a, b) => b.gzip - a.gzip || (a.name < b.name ? -1 : 1));
  for (const { name, raw, gzip } of files) {
    const when = first.chunks.includes(name) ? 'first load' : '';
    print(`${name.padEnd(52)} ${kilobytes(raw)} ${kilobytes(gzip)} gzip  ${when}`);
  }
  const verdict = first.gzipBytes <= FIRST_LOAD_BUDGET_BYTES ? 'within' : 'OVER';
  print(
    `JavaScript on first load, screen ${FIRST_SCREEN} included: ${kilobytes(first.gzipBytes).trim()} gzip in ${first.chunks.length} files, ` +
      `${verdict} the budget of ${kilobytes(FIRST_LOAD_BUDGET_BYTES).trim()}`,
  );
}

function kilobytes(bytes: number): string {
  return `${(bytes / 1000).toFixed(1)} kB`.padStart(10);
}

if (process.argv[1] === import.meta.filename) benchBundle(console.log, process.argv[2] ?? DIST);
