import { describe, expect, it } from 'vitest';
import {
  guessColumns,
  type IntakePlan,
  planIntake,
  readTable,
} from '../../../../src/exchange/intake/index.ts';
import type { PlainDay } from '../../../../src/journal/day.ts';
import type { Journal } from '../../../../src/journal/journal.ts';
import { unite } from '../../../../src/journal/journal.ts';
import { startProjection } from '../../../../src/registry/project.ts';
import { damCertainty, headOn, likelyDam, queenTitle } from '../../../../src/registry/queries.ts';
import type { Queen, Registry } from '../../../../src/registry/state.ts';
import { countingIds, scribe, written } from '../../../helpers/devices.ts';
import { family } from '../../../helpers/family.ts';

const today = '2026-06-01' as PlainDay;

interface Given {
  readonly answers?: Record<string, string>;
  readonly leaveOut?: readonly number[];
  readonly journal?: Journal;
  readonly fields?: Record<number, string>;
}

function plan(text: string, given: Given = {}): IntakePlan {
  const table = readTable(text);
  const mapping = guessColumns(table, today).map((each) => ({
    ...each,
    field: (given.fields?.[each.column] ?? each.field) as typeof each.field,
  }));
  return planIntake(table, mapping, startProjection(given.journal ?? new Map()), {
    today,
    newId: countingIds(7),
    answers: given.answers ?? {},
    leaveOut: new Set(given.leaveOut),
  });
}

/** The registry after the plan is accepted. */
function accepted(text: string, given: Given = {}): Registry {
  const entries = written(plan(text, given).drafts, scribe(countingIds(8)));
  const { registry } = startProjection(unite(given.journal ?? new Map(), entries).journal);
  expect(registry.contradictions).toEqual(
    startProjection(given.journal ?? new Map()).registry.contradictions,
  );
  return registry;
}

function queen(registry: Registry, name: string, year?: number): Queen {
  const found = [...registry.queens.values()].filter(
    (each) => each.name === name && (year === undefined || each.born?.first.startsWith(String(year))),
  );
  expect(found.map(queenTitle)).toEqual([name]);
  return found[0]!;
}

const damOf = (registry: Registry, name: string, year?: number) => {
  const dam = likelyDam(queen(registry, name, year));
  return dam && registry.queens.get(dam.queen);
};

const statuses = ({ rows }: IntakePlan) => rows.map(({ status }) => status);

describe('a table of queens', () => {
  const list =
    'queen,dam,year,hive\nAlder,?,2020,1\nBirch,daughter of Alder,2021,2\nCedar,Birch x unknown,2022,3\n';

  it('gives each queen her dam, her year and her box', () => {
    const registry = accepted(list);
    expect(damOf(registry, 'Cedar')?.name).toBe('Birch');
    expect(damOf(registry, 'Birch')?.name).toBe('Alder');
    expect(damCertainty(queen(registry, 'Alder'))).toBe('unknown');
    expect(queen(registry, 'Birch').born).toEqual({ first: '2021-01-01', last: '2021-12-31' });
    const heads = [...registry.colonies.values()].map((colony) => [
      colony.label,
      headOn(registry, colony, today)?.name,
    ]);
    expect(heads).toEqual([
      ['1', 'Alder'],
      ['2', 'Birch'],
      ['3', 'Cedar'],
    ]);
  });

  it('in any order of rows gives the same', () => {
    const [header, ...rows] = list.trim().split('\n');
    const registry = accepted([header, ...rows.reverse()].join('\n'));
    expect(damOf(registry, 'Cedar')?.name).toBe('Birch');
    expect(damOf(registry, 'Birch')?.name).toBe('Alder');
  });

  it('makes a queen of a dam of whom there is no row', () => {
    const registry = accepted('queen,dam,hive\nBirch,Alder,1\n');
    expect(damOf(registry, 'Birch')?.name).toBe('Alder');
    expect(queen(registry, 'Alder').tenures).toEqual([]);
  });

  it('tells two queens of one name apart by year and asks which one is a dam', () => {
    const text = 'queen,dam,year,hive\nBirch,,2020,1\nBirch,Birch,2022,2\nElder,Birch,2024,3\n';
    const asked = plan(text);
    const question = asked.questions.find(({ id }) => id.startsWith('which-dam'));
    expect(question).toMatchObject({ text: 'Which Birch is the dam in row 4?', line: 4 });
    expect(question!.options.map(({ words }) => words)).toEqual([
      'Birch of 2022, row 3',
      'Birch of 2020, row 2',
    ]);
    expect(damOf(accepted(text), 'Elder')?.born?.first).toBe('2022-01-01');
    const answers = { [question!.id]: question!.options[1]!.value };
    expect(damOf(accepted(text, { answers }), 'Elder')?.born?.first).toBe('2020-01-01');
    expect(damOf(accepted(text), 'Birch', 2022)?.born?.first).toBe('2020-01-01');
    expect(
      damOf(accepted('queen,dam,year,hive\nBirch,,2020,1\nBirch,,2022,2\nElder,Birch 2020,2024,3\n'), 'Elder')
        ?.born?.first,
    ).toBe('2020-01-01');
  });

  it('asks whether one name in several boxes is one queen', () => {
    const text = 'queen,hive,year\nBirch,1,2021\nBirch,2,2021\n';
    expect(plan(text).questions.map(({ id }) => id)).toContain('one-queen:2');
    expect(accepted(text).queens.size).toBe(2);
  });

  it('names the queen of a box when a dam is given by its label', () => {
    expect(
      damOf(accepted('queen,dam,year,hive\nAlder,,2020,3\nBirch,daughter of hive 3,2022,4\n'), 'Birch')?.name,
    ).toBe('Alder');
  });

  it('keeps a doubtful dam probable and several dams side by side', () => {
    const registry = accepted('queen,dam,hive\nBirch,Alder?,1\nCedar,Alder or Birch,2\n');
    expect(damCertainty(queen(registry, 'Birch'))).toBe('probable');
    expect(queen(registry, 'Cedar').parentage?.dams.map(({ probability }) => probability)).toEqual([
      0.5, 0.5,
    ]);
    const firm = accepted('queen,dam,hive\nBirch,Alder?,1\n', { answers: { 'doubtful-dam:2': 'firm' } });
    expect(damCertainty(queen(firm, 'Birch'))).toBe('firm');
  });

  it('puts queens of one box in order: the younger one ends the older one', () => {
    const registry = accepted('queen,year,hive\nCedar,2024,1\nAlder,2021,1\n');
    const [colony] = registry.colonies.values();
    expect(registry.colonies.size).toBe(1);
    expect(colony!.tenures.map(({ queen: id }) => registry.queens.get(id)?.name)).toEqual(['Alder', 'Cedar']);
    expect(damCertainty(queen(registry, 'Cedar'))).toBe('unknown');
  });

  it('starts a new colony under the label of one that died', () => {
    const registry = accepted('queen,year,hive,winter 2022/23\nAlder,2021,1,dead\nCedar,2024,1,\n');
    expect(registry.colonies.size).toBe(2);
    expect(queen(registry, 'Alder').state).toMatchObject({ is: 'gone', cause: 'died-with-colony' });
    expect(queen(registry, 'Cedar').state.is).toBe('laying');
  });

  it('writes a loss on its day, and asks for the day where there is none', () => {
    const registry = accepted('queen,hive,year,status,lost on\nAlder,1,2021,dead,2023-02\n');
    expect([...registry.colonies.values()][0]?.ended).toMatchObject({ day: '2023-02' });
    const text = 'queen,hive,year,status\nAlder,1,2021,dead\n';
    const open = plan(text);
    expect(open.questions).toMatchObject([{ id: 'lost-day:2', free: 'day' }]);
    expect(statuses(open)).toEqual(['partly']);
    expect(accepted(text).colonies.size).toBe(0);
    expect([...accepted(text, { answers: { 'lost-day:2': '2023' } }).colonies.values()][0]?.ended?.day).toBe(
      '2023',
    );
  });
});

describe('a table of visits', () => {
  const visits = 'date,hive,queen,gentle,mites\n2025-05-01,1,Birch,3.5,6/300\n2025-06-01,1,Birch,4,\n';

  it('enters the queen once and every record on its day', () => {
    const registry = accepted(visits);
    expect(registry.queens.size).toBe(1);
    const [colony] = registry.colonies.values();
    expect(colony!.entries.map(({ kind, day }) => [kind, day])).toEqual([
      ['colony-started', '2025-05-01'],
      ['queen-entered', '2025-05-01'],
      ['inspection', '2025-05-01'],
      ['mite-count', '2025-05-01'],
      ['inspection', '2025-06-01'],
    ]);
  });

  it('brought in twice adds nothing, and a longer one only what is new', () => {
    const first = written(plan(visits).drafts, scribe(countingIds(8)));
    const journal: Journal = new Map(first.map((entry) => [entry.id, entry]));
    const again = plan(visits, { journal });
    expect(again.drafts).toEqual([]);
    expect(statuses(again)).toEqual(['same', 'same']);
    const longer = plan(`${visits}2025-07-01,1,Birch,3,\n`, { journal });
    expect(longer.drafts).toMatchObject([{ kind: 'inspection', day: '2025-07-01', gentle: 3 }]);
    expect(statuses(longer)).toEqual(['same', 'same', 'ready']);
  });

  it('asks which number is the day when no cell of the column proves it', () => {
    const text = 'date,hive,gentle\n5/6/2025,1,3\n';
    expect(plan(text).questions).toContainEqual(
      expect.objectContaining({ id: 'day-order:0', guess: 'day-first' }),
    );
    const dayOf = (given: Given) => plan(text, given).drafts.find(({ kind }) => kind === 'inspection')?.day;
    expect(dayOf({})).toBe('2025-06-05');
    expect(dayOf({ answers: { 'day-order:0': 'month-first' } })).toBe('2025-05-06');
    expect(
      plan('date,hive,gentle\n5/6/2025,1,3\n25/6/2025,1,3\n').questions.map(({ id }) => id),
    ).not.toContain('day-order:0');
  });

  it('asks how scores run that do not run from 1 to 4, and keeps them as notes until then', () => {
    const text = 'date,hive,gentle\n2025-05-01,1,5\n2025-05-02,1,3\n';
    const open = plan(text);
    expect(open.questions.map(({ id }) => id)).toContain('scale:2');
    expect(open.drafts.some(({ kind }) => kind === 'inspection')).toBe(false);
    const turned = plan(text, { answers: { 'scale:2': '5-1' } });
    expect(turned.drafts.flatMap((draft) => (draft.kind === 'inspection' ? [draft.gentle] : []))).toEqual([
      1, 2.5,
    ]);
  });

  it('asks when undated records were taken', () => {
    const text = 'hive,queen,gentle\n1,Birch,3\n';
    expect(plan(text).questions.map(({ id }) => id)).toContain('records-day');
    expect(statuses(plan(text))).toEqual(['partly']);
    const registry = accepted(text, { answers: { 'records-day': 'May 2025' } });
    expect(registry.entries.find(({ kind }) => kind === 'inspection')).toMatchObject({
      day: '2025-05',
      gentle: 3,
    });
  });
});

describe('a row with a problem', () => {
  it('stays out and says row, column, what stands there, why and what to do; the others go in', () => {
    const result = plan('date,hive,gentle\n2025-05-01,1,3\nsomeday,2,3\n2027-01-01,3,3\n2025-05-03,,3\n');
    expect(statuses(result)).toEqual(['ready', 'problem', 'problem', 'problem']);
    expect(result.rows[1]?.problems).toMatchObject([
      {
        where: 'Row 3, column A (date)',
        field: 'date',
        found: 'someday',
        because: 'This is no day, month or year.',
      },
    ]);
    for (const { problems } of result.rows.slice(1)) {
      for (const { where, found, because, remedy } of problems) {
        for (const words of [where, found, because, remedy]) expect(words.length).toBeGreaterThan(2);
      }
    }
    expect(JSON.stringify(result.drafts)).not.toContain('2027');
  });

  it('that would make a daughter older than her dam is found by the rules of the records', () => {
    const result = plan('queen,dam,year,hive\nBirch,,2024,1\nElder,Birch,2021,2\n');
    expect(statuses(result)).toContain('problem');
    expect(result.rows.flatMap(({ problems }) => problems.map(({ code }) => code))).toContain(
      'daughter-older-than-dam',
    );
  });

  it('that closes a ring of dams is cut out', () => {
    const result = plan('queen,dam,hive\nAlder,Birch,1\nBirch,Alder,2\n');
    expect(statuses(result)).toContain('problem');
    expect(result.rows.flatMap(({ problems }) => problems.map(({ because }) => because)).join()).toContain(
      'own daughter',
    );
  });

  it('can be left out by the keeper', () => {
    const result = plan('queen,hive\nBirch,1\nAlder,2\n', { leaveOut: [2] });
    expect(statuses(result)).toEqual(['left-out', 'ready']);
    expect(JSON.stringify(result.drafts)).not.toContain('Birch');
  });

  it('of cells that cannot be read keeps them as notes', () => {
    const registry = accepted('date,hive,queen,mites\n2025-05-01,1,Birch,2 %\n');
    const note = registry.entries.find((entry) => entry.kind === 'note');
    expect(note).toMatchObject({ text: 'mites: 2 %', day: '2025-05-01' });
  });
});

describe('a table beside records', () => {
  it('finds queens and boxes on record by name and label', () => {
    const { journal, registry: before, queens } = family();
    const registry = accepted('date,hive,queen,gentle\n2026-05-01,Box 4,Cedar,3\n', { journal });
    expect(registry.queens.size).toBe(before.queens.size);
    expect(registry.colonies.size).toBe(before.colonies.size);
    expect(registry.queens.get(queens.cedar)?.entries.at(-1)).toMatchObject({
      kind: 'inspection',
      gentle: 3,
    });
  });

  it('hangs new daughters on queens on record', () => {
    const { journal, queens } = family();
    const registry = accepted('queen,dam,year,hive,yard\nGorse,d. of Cedar,2025,99,Hill\n', { journal });
    expect(likelyDam(queen(registry, 'Gorse'))?.queen).toBe(queens.cedar);
    expect(registry.yards.size).toBe(1);
  });

  it('leaves out a row that contradicts them', () => {
    const { journal } = family();
    const result = plan('date,hive,queen,gentle\n2019-05-01,Box 1,Old Alder,3\n', { journal });
    expect(statuses(result)).toEqual(['problem']);
    expect(result.rows[0]?.problems[0]?.code).toBe('colony-not-started');
    expect(result.drafts).toEqual([]);
  });
});

describe('a table that cannot be used', () => {
  it.each(['', 'a,b\n1,2\n', 'colour\nblue'])('says so: %j', (text) => {
    const result = plan(text);
    expect(result.problems.length).toBeGreaterThan(0);
    expect(result.drafts).toEqual([]);
  });
});
