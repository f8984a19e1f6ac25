import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';

const root = resolve(import.meta.dirname, '../..');

/** What each folder may import: folders of ours, and packages. Type imports count. First match wins. */
const RULES: readonly {
  readonly room: string;
  readonly folders: readonly string[];
  readonly packages: RegExp;
}[] = [
  { room: 'graph', folders: ['graph'], packages: /^graphology(-types)?$/ },
  { room: 'src/journal', folders: ['src/journal'], packages: /^(zod|uuidv7)$/ },
  {
    room: 'src/registry',
    folders: ['src/journal', 'src/registry', 'graph'],
    packages: /^graphology(-types)?$/,
  },
  { room: 'src/workers', folders: ['src/workers', 'src/registry', 'src/journal', 'graph'], packages: /^$/ },
  {
    room: 'src/exchange',
    folders: ['src/exchange', 'src/registry', 'src/journal', 'graph'],
    packages: /^(zod|papaparse|ical-generator|graphology|graphology-types)$/,
  },
  { room: 'src/store', folders: ['src', 'graph'], packages: /^(idb|@preact\/signals|uuidv7|zod)$/ },
  { room: 'src/main.tsx', folders: ['src', 'views'], packages: /^(preact|virtual:pwa-register)/ },
  { room: 'src/cli.ts', folders: ['src', 'graph'], packages: /^node:/ },
  { room: 'src/cli', folders: ['src', 'graph'], packages: /^(node:|papaparse$)/ },
  {
    room: 'views',
    folders: ['views', 'src/store', 'src/journal', 'src/registry', 'src/exchange', 'graph'],
    packages: /^(preact|@preact\/signals|wouter-preact|d3-[a-z]+)/,
  },
];

function sourceFiles(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name));
}

function imports(text: string): string[] {
  const pattern =
    /(?:import|export)\s[^'"]*?from\s*['"]([^'"]+)['"]|import\s*['"]([^'"]+)['"]|import\(\s*['"]([^'"]+)['"]/g;
  return [...text.matchAll(pattern)].map((match) => match[1] ?? match[2] ?? match[3] ?? '');
}

/** The sentences that say which import breaks which rule in one file. */
function brokenRules(path: string, text: string): string[] {
  const rule = RULES.find(({ room }) => path === room || path.startsWith(`${room}/`));
  if (!rule) return [];
  return imports(text).flatMap((name) => {
    if (!name.startsWith('.')) {
      return rule.packages.test(name) ? [] : [`${path} imports the package ${name}; ${rule.room} may not.`];
    }
    const target = relative(root, resolve(root, dirname(path), name));
    const allowed = rule.folders.some((folder) => target === folder || target.startsWith(`${folder}/`));
    return allowed
      ? []
      : [`${path} imports ${target}; ${rule.room} may import only ${rule.folders.join(', ')}.`];
  });
}

describe('the direction of dependencies', () => {
  it('is kept by every file of graph, src and views', () => {
    const files = ['graph', 'src', 'views'].flatMap((folder) => sourceFiles(join(root, folder)));
    expect(files.length).toBeGreaterThan(10);
    expect(files.flatMap((file) => brokenRules(relative(root, file), readFileSync(file, 'utf8')))).toEqual(
      [],
    );
  });

  it('is broken, with a sentence, by a graph file that imports the store or a clock library', () => {
    const text = "import { store } from '../../src/store/index.ts';\nimport type { X } from 'idb';";
    expect(brokenRules('graph/kinship/bad.ts', text)).toHaveLength(2);
  });

  it('is broken by a reading of the clock or of chance inside graph', () => {
    const offenders = sourceFiles(join(root, 'graph')).filter((file) =>
      /Math\.random\(|Date\.now\(|new Date\(\)|performance\.now\(/.test(readFileSync(file, 'utf8')),
    );
    expect(offenders).toEqual([]);
  });
});
