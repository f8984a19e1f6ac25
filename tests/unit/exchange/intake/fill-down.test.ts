import { describe, expect, it } from 'vitest';
import {
  cellKey,
  guessColumns,
  type IntakePlan,
  mendTable,
  planIntake,
  readTable,
} from '../../../../src/exchange/intake/index.ts';
import type { PlainDay } from '../../../../src/journal/day.ts';
import { startProjection } from '../../../../src/registry/project.ts';
import { countingIds, scribe } from '../../../helpers/devices.ts';
import { family } from '../../../helpers/family.ts';

const today = '2026-06-01' as PlainDay;

function plan(
  text: string,
  answers: Record<string, string> = {},
  mended = new Map<string, string>(),
  projection = startProjection(new Map()),
): IntakePlan {
  const table = mendTable(readTable(text), mended);
  return planIntake(table, guessColumns(table, today), projection, {
    today,
    newId: countingIds(7, 1_000_000),
    answers,
    leaveOut: new Set(),
  });
}

const yardsOf = ({ drafts }: IntakePlan) =>
  drafts.flatMap((draft) => (draft.kind === 'yard-opened' ? [draft.name] : []));

describe('cells that were merged', () => {
  const MERGED =
    'Yard,Hive,Queen,Year\nHome,1,Ash,2021\n,2,Elm,2022\n,3,Yew,2022\nOut,4,Fir,2023\n,5,Larch,2023\n';

  it('hold for the rows below, and the keeper is asked', () => {
    const read = plan(MERGED);
    expect(read.questions.map(({ text }) => text)).toContain(
      '"Yard" is empty in some rows, such as row 3. What holds there?',
    );
    expect(yardsOf(read).sort()).toEqual(['Home', 'Out']);
  });

  it('hold for nothing where the keeper says so', () => {
    expect(yardsOf(plan(MERGED, { 'fill-down:0': 'empty', yard: 'Elsewhere' }))).toContain('Elsewhere');
  });

  it('are not suspected where a value is written row by row', () => {
    const read = plan('Yard,Hive,Queen\nHome,1,Ash\nHome,2,Elm\n,3,Yew\nOut,4,Fir\n');
    expect(read.questions.some(({ id }) => id.startsWith('fill-down'))).toBe(false);
  });

  it('of days date every hive of a walk, and of boxes never take a named queen along', () => {
    const walk = plan('date,hive,queen,frames\n3.4.2024,1,,5\n,2,,6\n17.4.2024,1,,7\n,2,,8\n');
    expect(walk.drafts.flatMap((each) => (each.kind === 'inspection' ? [each.day] : []))).toEqual([
      '2024-04-03',
      '2024-04-03',
      '2024-04-17',
      '2024-04-17',
    ]);
    const named = plan('hive,queen,year\n1,Ash,2021\n,Elm,2022\n2,Yew,2022\n,Fir,2023\n');
    expect(named.questions.some(({ id }) => id.startsWith('fill-down'))).toBe(false);
  });
});

describe('a row', () => {
  it('that says again word for word what one above said is taken once', () => {
    const read = plan('queen,hive,date,honey\nAsh,1,2024-07-01,12\nAsh,1,2024-07-01,12\n');
    expect(read.rows[1]).toMatchObject({ status: 'skipped', summary: 'Row 2 once more, word for word.' });
    expect(read.drafts.filter(({ kind }) => kind === 'harvest')).toHaveLength(1);
  });

  it('is not taken for a repetition where a merged day stands between', () => {
    const walks = plan('date,hive,queen,frames\n3.4.2024,1,,5\n,2,,6\n17.4.2024,1,,7\n,2,,6\n');
    expect(walks.rows.map(({ status }) => status)).toEqual(['ready', 'ready', 'ready', 'ready']);
  });

  it('says of a dam without a row that only her name is known', () => {
    expect(plan('queen,dam\nElm,Ash\nAsh,Fern\n').rows.map(({ summary }) => summary)).toEqual([
      'Elm, daughter of Ash',
      'Ash, daughter of Fern (known by name only)',
    ]);
  });

  it('tells a loss without a day in words and not in a code', () => {
    const [row] = plan('queen,hive,year,status\nSedge,9,2025,sold to a neighbour\n').rows;
    expect(row?.problems.map(({ found }) => found)).toEqual(['given away']);
  });

  it('is taken in once the cell that kept it out is written anew', () => {
    const text = 'queen,hive,date,frames\nAsh,1,31.4.2024,5\n';
    const [before] = plan(text).rows;
    expect(before).toMatchObject({ status: 'problem', problems: [{ column: 2 }] });
    const [after] = plan(text, {}, new Map([[cellKey(2, 2), ' 30.4.2024 ']])).rows;
    expect(after?.status).toBe('ready');
  });

  it('that would contradict what is on record stays out, also when only its year is known', () => {
    const records = startProjection(family(scribe(countingIds(1))).journal);
    const text =
      'queen,dam,date,winter 2023/24,status,lost on,gentle\nBirch,Alder,2024-05-01,yes,sold to Jon,2022,3\n';
    const [row] = plan(text, {}, new Map(), records).rows;
    expect(row?.status).toBe('problem');
    expect(row?.problems[0]?.because).toContain('she laid nowhere that brood in Box 2 can be from');
  });
});
