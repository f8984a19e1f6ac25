import { existsSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { Entry, kindTitle } from '../../src/journal/entry.ts';

const root = resolve(import.meta.dirname, '../..');
const read = (name: string) => readFileSync(resolve(root, name), 'utf8');

describe('the documents', () => {
  it('list every entry kind with its title', () => {
    const text = read('DEVELOPERS.md');
    const missing = Entry.options
      .map((option) => option.shape.kind.value)
      .filter((kind) => !text.includes(`| \`${kind}\` | ${kindTitle(kind)} |`));
    expect(missing).toEqual([]);
  });

  it('give every runtime dependency its line', () => {
    const text = read('DEVELOPERS.md');
    const { dependencies } = JSON.parse(read('package.json')) as { dependencies: Record<string, string> };
    expect(Object.keys(dependencies).filter((name) => !text.includes(name))).toEqual([]);
  });

  it('name only folders and files that are there', () => {
    const named = [...read('DEVELOPERS.md').matchAll(/`((?:src|graph|views|tests|samples)\/[\w./-]+)`/g)].map(
      ([, path]) => path ?? '',
    );
    expect(named.length).toBeGreaterThan(20);
    expect(named.filter((path) => !existsSync(resolve(root, path)))).toEqual([]);
  });

  it('name only commands that package.json has', () => {
    const { scripts } = JSON.parse(read('package.json')) as { scripts: Record<string, string> };
    const text = `${read('README.md')}\n${read('DEVELOPERS.md')}`;
    const named = [...text.matchAll(/npm run (?:-s )?([\w:]+)/g)].map(([, name]) => name ?? '');
    expect(named.filter((name) => !(name in scripts))).toEqual([]);
  });
});
