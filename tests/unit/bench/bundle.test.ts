import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { firstLoad, staticImports } from '../../bench/bundle.ts';

describe('what the first opening loads', () => {
  it('finds imports and re-exports, and not what is imported later', () => {
    const code = [
      'import{a as b}from"./one.js";import"./two.js";import*as c from"../three.js";import d,{e}from"./four.js"',
      'export{f}from"./five.js";const g=()=>import("./six.js");h("./seven.js");',
    ].join(';');
    expect(staticImports(code)).toEqual(['./one.js', './two.js', '../three.js', './four.js', './five.js']);
  });

  it('counts the scripts of the page, its first screen and their imports once each', () => {
    const dist = mkdtempSync(join(tmpdir(), 'bundle-'));
    const files = {
      'assets/index-1.js': 'import"./shared-1.js";const later=()=>import("./lines-1.js");',
      'assets/yards-1.js': 'import"./shared-1.js";console.log("yards");',
      'assets/lines-1.js': 'console.log("lines");',
      'assets/shared-1.js': 'console.log("shared");',
    };
    mkdirSync(join(dist, 'assets'));
    writeFileSync(join(dist, 'index.html'), '<script type="module" src="./assets/index-1.js"></script>');
    for (const [name, code] of Object.entries(files)) writeFileSync(join(dist, name), code);
    const first = firstLoad(dist);
    rmSync(dist, { recursive: true });
    const expected = ['assets/index-1.js', 'assets/shared-1.js', 'assets/yards-1.js'] as const;
    expect(first.chunks).toEqual(expected);
    const bytes = expected.reduce((sum, name) => sum + gzipSync(files[name], { level: 9 }).length, 0);
    expect(first.gzipBytes).toBe(bytes);
  });
});
