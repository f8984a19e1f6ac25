/** `trace`: a queen's dams, step by step, to the founder. */

import type { PlainDay } from '../journal/day.ts';
import { likelyDam, queenTitle } from '../registry/queries.ts';
import type { Queen, Registry } from '../registry/state.ts';
import { wintersHeaded } from '../registry/winters-of-queen.ts';
import { type Command, OUT_OPTION } from './command.ts';
import { csvField, csvNumber, csvWriter } from './csv-write.ts';
import { ON_OPTION, queensCalled, type Read, readRegistryFile } from './registry-file.ts';

const COLUMNS = [
  'step',
  'queen',
  'name',
  'born',
  'probability',
  'evidence',
  'made_by',
  'winters',
  'state',
] as const;

export const traceCommand: Command = {
  name: 'trace',
  files: ['FILE.damline.json', 'QUEEN'],
  options: [ON_OPTION, OUT_OPTION],
  notes: [
    'QUEEN is her name or her id. A name that several queens bear is refused with the ids to choose from.',
    `Prints ${COLUMNS.join(',')}: the queen herself at step 0, then by the most likely dam each time. The probability ` +
      'is that of the whole way from step 0; winters are those she headed a colony through.',
  ],
  async run(given, world) {
    const read = readRegistryFile(world, given);
    if (!read.ok) return read;
    const { registry, on } = read.value;
    const found = oneQueen(registry, given.positions[1] ?? '');
    if (!found.ok) return found;
    const out = csvWriter(world.openOutput(given.options.get('out')), COLUMNS);
    for (const line of damLine(registry, found.value, on)) {
      const full = out.line(line);
      if (full) await full;
    }
    await out.close();
    return { ok: true };
  },
};

function oneQueen(registry: Registry, word: string): Read<Queen> {
  const [queen, ...others] = queensCalled(registry, word);
  if (!queen) {
    return {
      ok: false,
      problems: [`No queen in this file has the name or id '${word}'. Names are listed by 'rank'.`],
    };
  }
  if (others.length === 0) return { ok: true, value: queen };
  const choices = [queen, ...others].map(
    (each) => `${each.id} (born ${bornText(each) || 'on a day not known'})`,
  );
  return {
    ok: false,
    problems: [`${choices.length} queens are called '${word}'. Name one by its id: ${choices.join(', ')}.`],
  };
}

function bornText({ born }: Queen): string {
  if (!born) return '';
  return born.first === born.last ? born.first : `${born.first}/${born.last}`;
}

function damLine(registry: Registry, start: Queen, on: PlainDay): readonly string[] {
  const lines: string[] = [];
  const seen = new Set<string>();
  let probability = 1;
  for (let queen: Queen | undefined = start; queen && !seen.has(queen.id); ) {
    seen.add(queen.id);
    const making = queen.madeBy ? registry.makings.get(queen.madeBy)?.how : undefined;
    lines.push(
      [
        String(lines.length),
        queen.id,
        csvField(queenTitle(queen)),
        bornText(queen),
        csvNumber(probability),
        queen.parentage?.evidence ?? '',
        making ?? '',
        String(wintersHeaded(queen, on)),
        queen.state.is,
      ].join(','),
    );
    const dam = likelyDam(queen);
    probability *= dam?.probability ?? 1;
    queen = dam && registry.queens.get(dam.queen);
  }
  return lines;
}
