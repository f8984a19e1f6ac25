import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { describe, expect, it } from 'vitest';

const graph = join(import.meta.dirname, '../../../graph');
const sources = readFileSync(join(graph, 'SOURCES.md'), 'utf8').split('\n');

/** An author with others and a year, as in "Colleau 2002", "Laidlaw & Page 1984", "Legarra et al. 2015". */
const CITATION =
  /\b(\p{Lu}\p{Ll}+(?:-\p{Lu}\p{Ll}+)?)(?:(?:,| &| and|, &) (?:van der |de )?\p{Lu}[\p{L}-]+)*(?: et al\.)?,? \(?((?:19|20)\d\d)\b/gu;

interface Citation {
  readonly file: string;
  readonly author: string;
  readonly year: string;
}

/** What the comments of a file cite. */
function citations(file: string, text: string): Citation[] {
  const comments = text.match(/\/\*\*[\s\S]*?\*\//g) ?? [];
  return comments.flatMap((comment) =>
    [...comment.replaceAll(/\n\s*\*\s?/g, ' ').matchAll(CITATION)].map(([, author = '', year = '']) => ({
      file,
      author,
      year,
    })),
  );
}

const files = readdirSync(graph, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
  .map((entry) => join(entry.parentPath, entry.name));

describe('graph/SOURCES.md', () => {
  it('holds every source that a file of graph cites', () => {
    const cited = files.flatMap((file) => citations(relative(graph, file), readFileSync(file, 'utf8')));
    expect(cited.length).toBeGreaterThan(30);
    const missing = cited.filter(
      ({ author, year }) => !sources.some((line) => line.includes(author) && line.includes(year)),
    );
    expect(missing).toEqual([]);
  });

  it('would be found wanting by a source nobody listed', () => {
    const text = '/** Source: Nobody & Never 1901, A paper\n * that Another et al. 1902 answers. */';
    expect(citations('x.ts', text).map(({ author, year }) => `${author} ${year}`)).toEqual([
      'Nobody 1901',
      'Another 1902',
    ]);
  });
});

describe('a file of graph', () => {
  it('opens with what it computes, unless it only gathers or only declares', () => {
    const silent = files.filter((file) => {
      const text = readFileSync(file, 'utf8');
      return !text.includes('/**') && !/^(export \* from|export (type )?\{)/m.test(text);
    });
    expect(silent.map((file) => relative(graph, file))).toEqual([]);
  });
});
