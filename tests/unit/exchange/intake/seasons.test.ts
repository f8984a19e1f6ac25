import { describe, expect, it } from 'vitest';
import { guessColumns, planIntake, readTable } from '../../../../src/exchange/intake/index.ts';
import type { PlainDay } from '../../../../src/journal/day.ts';
import { writeEntries } from '../../../../src/journal/write.ts';
import { startProjection } from '../../../../src/registry/project.ts';
import { countingIds, scribe } from '../../../helpers/devices.ts';

/** A table with a row for each queen and season, as a notebook is kept: the same queen comes again each year. */

const TODAY = '2026-04-12' as PlainDay;

type Answers = Readonly<Record<string, string>>;

function plan(text: string, answers: Answers = {}, projection = startProjection(new Map()), ids = 1_000_000) {
  const table = readTable(text);
  const mapping = guessColumns(table, TODAY);
  const newId = countingIds(7, ids);
  const options = { today: TODAY, newId, answers, leaveOut: new Set<number>() };
  return { mapping, ...planIntake(table, mapping, projection, options) };
}

type Plan = ReturnType<typeof plan>;

const of = <K extends Plan['drafts'][number]['kind']>({ drafts }: Plan, kind: K) =>
  drafts.filter((draft): draft is Extract<Plan['drafts'][number], { kind: K }> => draft.kind === kind);

const NOTEBOOK = [
  'Season;Hive;Queen;Her mother;Born;Place;Wash date;Mites;Alive in spring after',
  '2021;Hive 1;21-1;swarm;;Orchard;16.8.2021;3/300;y',
  '2021;4;21-4;?;;orchard ;19.8.2021;12/300;dead',
  '2022;1;21-1;;;Orchard;20.8.2022;6;+',
  '2022;5;22-1;21–1;18.6.2022;orchard;23.8.2022;1,3 %;yes',
  '2022;1;21-1;;;;9.9.2022;2/300;',
  '2023;H1;21/1;;;Orchard;27.8.2023;3/300;no',
  '2023;4;23-1;22-1;2023-06-12;Orchard;18.8.2023;2/300;+',
].join('\n');

describe('a table with a row for each season', () => {
  const read = plan(NOTEBOOK);

  it('takes the year for that of the row, and not for that of the queen', () => {
    expect(read.mapping.map(({ field }) => field).slice(0, 5)).toEqual([
      'season',
      'colony',
      'queen',
      'dam',
      'born',
    ]);
    expect(of(read, 'queen-entered').map(({ name }) => name)).toEqual(['21-1', '21-4', '22-1', '23-1']);
  });

  it('gives each row the winter after its season', () => {
    expect(of(read, 'winter-outcome').map(({ winter, alive }) => [winter, alive])).toEqual([
      [2022, true],
      [2022, false],
      [2023, true],
      [2023, true],
      [2024, false],
      [2024, true],
    ]);
  });

  it('gives each row the winter before its season where the keeper says so', () => {
    const before = plan(NOTEBOOK.replace('Alive in spring after', 'Wintered'), {
      'winter:8': 'before-season',
    });
    expect(of(before, 'winter-outcome').map(({ winter }) => winter)).toContain(2021);
  });

  it('holds Hive 1, H1 and 1 for one box, labelled as most rows write it, and a place written in two ways for one yard', () => {
    expect(of(read, 'colony-started').map(({ label }) => label)).toEqual(['1', '4', '5', '4']);
    expect(of(read, 'yard-opened').map(({ name }) => name)).toEqual(['Orchard']);
  });

  it('asks once of how many bees a mere number or a percentage is, and keeps them as notes until told', () => {
    expect(read.questions.map(({ id }) => id)).toContain('mite-bees:7');
    expect(of(read, 'mite-count')).toHaveLength(5);
    const told = of(plan(NOTEBOOK, { 'mite-bees:7': '300' }), 'mite-count');
    expect(told.map(({ sample }) => sample.mites)).toEqual([3, 12, 6, 4, 2, 2, 3]);
  });

  it('dates what has no day by its season', () => {
    const undated = plan(
      'Season;Hive;Queen;Frames\n2024;1;Ash;5\n2024;2;Elm;4\n2025;1;Ash;6\n2025;2;Elm;7\n',
    );
    expect(of(undated, 'inspection').map(({ day }) => day)).toEqual(['2024', '2024', '2025', '2025']);
  });
});

describe('a month over a column', () => {
  it('dates what stands below it, whatever the day of the row', () => {
    const read = plan('Season;Hive;Queen;Wash date;Mites;Frames of bees Apr\n2024;1;Ash;20.8.2024;3/300;5\n');
    expect(of(read, 'inspection').map(({ day }) => day)).toEqual(['2024-04']);
    expect(of(read, 'mite-count').map(({ day }) => day)).toEqual(['2024-08-20']);
  });
});

describe('a year beside the queen', () => {
  it('stays her own where each queen stands once', () => {
    const { mapping } = plan('Year;Hive;Queen\n2024;1;Ash\n2025;2;Elm\n2025;3;Fir\n');
    expect(mapping[0]?.field).toBe('born');
  });
});

describe('columns of births and winters', () => {
  it('stay births where days stand among the years', () => {
    const { mapping } = plan(
      'Queen;Born\nAsh;18.6.2022\nElm;June 2023\nFir;2024\nYew;12.6.2025\nOak;1.6.2025\n',
    );
    expect(mapping[1]?.field).toBe('born');
  });

  it('are winters where nothing but the two years stands over them', () => {
    const { mapping } = plan('Queen;Hive;2022/23;2023/24\nAsh;1;y;no\nElm;2;+;yes\n');
    expect(mapping.slice(2).map(({ field, year }) => [field, year])).toEqual([
      ['winter', 2023],
      ['winter', 2024],
    ]);
  });
});

describe('a second table about boxes that were lived in twice', () => {
  const first = plan(NOTEBOOK);
  const written = writeEntries(first.drafts, scribe());
  if (!written.ok) throw new Error('The notebook is taken in.');
  const journal = new Map(written.value.map((entry) => [entry.id, entry] as const));
  const second = plan(
    'Queen;Date;Mites\n21-4;20.8.2021;9/300\n23-1;20.8.2024;4/300\n',
    {},
    startProjection(journal),
    2_000_000,
  );

  it('goes to the colony that the queen heads, not to the one that stood there before', () => {
    const [older, younger] = of(first, 'colony-started').filter(({ label }) => label === '4');
    expect(of(second, 'mite-count').map(({ colony }) => colony)).toEqual([older?.colony, younger?.colony]);
    expect(second.rows.map(({ status }) => status)).toEqual(['ready', 'ready']);
  });
});

describe('a queen who was bought', () => {
  it('has no dam of that name', () => {
    const [ash] = of(plan('Queen;Mother;Hive\nAsh;bought;1\n'), 'queen-entered');
    expect(ash?.parentage).toBeUndefined();
  });
});

describe('a row of totals', () => {
  it('is none of a box, though it says what was counted', () => {
    expect(of(plan('Season;Hive;Queen\n2024;1;Ash\nTotal;25 queens;\n'), 'colony-started')).toHaveLength(1);
  });
});
