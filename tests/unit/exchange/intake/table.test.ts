import { describe, expect, it } from 'vitest';
import { guessColumns, readTable } from '../../../../src/exchange/intake/index.ts';
import type { PlainDay } from '../../../../src/journal/day.ts';

const today = '2026-06-01' as PlainDay;
const fields = (text: string) => guessColumns(readTable(text), today).map(({ field }) => field);

describe('a table', () => {
  it.each([',', ';', '\t', '|'])('is taken apart at %j, decimal commas and all', (delimiter) => {
    const text = [
      ['queen', 'hive', 'gentle'],
      ['Birch', '1', '3.5'],
      ['Alder', '2', '"3,5"'],
    ]
      .map((row) => row.join(delimiter))
      .join('\n');
    const table = readTable(text);
    expect(table.delimiter).toBe(delimiter);
    expect(table.rows.map(({ cells }) => cells)).toEqual([
      ['Birch', '1', '3.5'],
      ['Alder', '2', '3,5'],
    ]);
  });

  it('keeps semicolons apart from decimal commas that are not quoted', () => {
    const table = readTable('Königin;Sanftmut;Waben\nBirke;3,5;6,5\nErle;4;7,5\n');
    expect(table.delimiter).toBe(';');
    expect(table.rows[0]?.cells).toEqual(['Birke', '3,5', '6,5']);
  });

  it('counts rows as the sheet does, over titles and blank rows', () => {
    const table = readTable('My queens,,\n,,\nqueen,hive,year\n,,\nBirch,1,2021\n');
    expect(table.header).toEqual(['queen', 'hive', 'year']);
    expect(table.rows).toEqual([{ line: 5, cells: ['Birch', '1', '2021'] }]);
  });

  it('puts two header rows together, the upper one over the empty cells beside it', () => {
    const table = readTable('queen;winter;;gentle\n;2023/24;2024/25;(1-4)\nBirch;yes;no;3\n');
    expect(table.header).toEqual(['queen', 'winter 2023/24', 'winter 2024/25', 'gentle (1-4)']);
    expect(table.rows).toHaveLength(1);
  });

  it('without a header has none, and its first row stays', () => {
    const table = readTable('Birch,daughter of Alder,2021\nCedar,daughter of Birch,2022\n');
    expect(table.header).toEqual(['', '', '']);
    expect(table.rows).toHaveLength(2);
    expect(
      guessColumns(table, today)
        .map(({ field }) => field)
        .slice(1),
    ).toEqual(['dam', 'born']);
  });

  it.each(['', '\n\n', ',,,\n,,', '"', '"a\nb', '\0', 'x'])('is made of any text: %j', (text) => {
    expect(() => guessColumns(readTable(text), today)).not.toThrow();
  });
});

describe('the guess of a column', () => {
  it('knows English words and obvious foreign ones', () => {
    expect(
      fields('queen,dam,hive,apiary,year,colour,temper,mites,notes\nBirch,Alder,1,Hill,2021,blue,3,6/300,x'),
    ).toEqual(['queen', 'dam', 'colony', 'yard', 'born', 'mark', 'gentle', 'mites', 'note']);
    expect(
      fields(
        'Königin;Mutter;Volk;Standort;Jahrgang;Farbe;Sanftmut;Milben\nBirke;Erle;1;Hang;2021;blau;3;6/300',
      ),
    ).toEqual(['queen', 'dam', 'colony', 'yard', 'born', 'mark', 'gentle', 'mites']);
  });

  it('is surer where the cells agree, and says why', () => {
    const [, born, note] = guessColumns(readTable('queen,year,zzz\nBirch,2021,hm\n'), today);
    expect(born).toMatchObject({ confidence: 1, because: expect.stringContaining('agree') });
    expect(note).toMatchObject({ field: 'note', samples: ['hm'] });
    expect(note!.confidence).toBeLessThan(0.5);
  });

  it('reads the winter off the header', () => {
    expect(guessColumns(readTable('queen,Winter 22/23\nBirch,yes'), today)[1]).toMatchObject({
      field: 'winter',
      year: 2023,
    });
  });

  it('gives a field that comes once to the column that fits best; the other is a note', () => {
    expect(fields('queen,name of the queen,hive\nBirch,B.,1')).toEqual(['queen', 'note', 'colony']);
  });
});
