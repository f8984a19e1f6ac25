/** `rank`: whom to breed from, by the weighted index of all traits. */
import { TRAITS, weightedIndex } from '../../graph/merit/index.ts';
import type { QueenId } from '../journal/ids.ts';
import { evaluationWork } from '../registry/evaluation.ts';
import { headOn, isAlive, queenTitle } from '../registry/queries.ts';
import type { Registry } from '../registry/state.ts';
import { DEFAULT_SETTINGS } from '../store/settings.ts';
import { traitWeights } from '../store/trait-weights.ts';
import { evaluateWork } from '../workers/evaluate.ts';
import { type Command, OUT_OPTION } from './command.ts';
import { csvField, csvNumber, csvWriter } from './csv-write.ts';
import { ON_OPTION, readRegistryFile } from './registry-file.ts';

const COLUMNS = [
  'rank',
  'queen',
  'name',
  'colony',
  'line',
  'index',
  'standard_error',
  'reliability',
  'inbreeding',
  ...TRAITS.map(({ id }) => id.replaceAll('-', '_')),
];

export const rankCommand: Command = {
  name: 'rank',
  files: ['FILE.damline.json'],
  options: [ON_OPTION, OUT_OPTION],
  notes: [
    `Prints ${COLUMNS.slice(0, 9).join(',')} and the breeding value of each trait in the trait's unit, best index first. ` +
      'Weights are those that the app suggests. Ranks of queens whose indexes lie within their standard errors of one ' +
      'another say nothing.',
  ],
  async run(given, world) {
    const read = readRegistryFile(world, given);
    if (!read.ok) return read;
    const { registry, on } = read.value;
    const work = evaluationWork(registry, on, { sexAlleles: DEFAULT_SETTINGS.sexAlleles });
    const answer = evaluateWork(work);
    if (!answer) throw new Error('An evaluation that nobody stops comes to its end.');
    const { evaluation, diagonal, inbreeding, candidates } = answer;
    const index = weightedIndex(evaluation.traits, traitWeights(DEFAULT_SETTINGS), diagonal);
    const boxes = boxesOf(registry, on);
    const places = new Map<string, number>(evaluation.queens.map((id, at) => [id, at]));
    const ranked = candidates
      .flatMap((id) => {
        const at = places.get(id);
        const value = at === undefined ? undefined : index[at];
        return at === undefined || !value ? [] : [{ id: id as QueenId, at, value }];
      })
      .sort((a, b) => b.value.index - a.value.index || (a.id < b.id ? -1 : 1));
    const out = csvWriter(world.openOutput(given.options.get('out')), COLUMNS);
    for (const [place, { id, at, value }] of ranked.entries()) {
      const queen = registry.queens.get(id);
      const founder = registry.queens.get(work.lines.get(id) ?? id);
      const fields = [
        String(place + 1),
        id,
        csvField(queen ? queenTitle(queen) : ''),
        csvField(boxes.get(id) ?? ''),
        csvField(founder ? queenTitle(founder) : ''),
        csvNumber(value.index),
        csvNumber(value.standardError),
        csvNumber(value.reliability),
        csvNumber(inbreeding[at]),
        ...evaluation.traits.map(({ breedingValue }) => csvNumber(breedingValue?.[at])),
      ];
      const full = out.line(fields.join(','));
      if (full) await full;
    }
    await out.close();
    return { ok: true };
  },
};

function boxesOf(registry: Registry, on: Parameters<typeof isAlive>[1]): ReadonlyMap<string, string> {
  return new Map(
    [...registry.colonies.values()].flatMap((colony): [string, string][] => {
      const head = isAlive(colony, on) ? headOn(registry, colony, on) : undefined;
      return head ? [[head.id, colony.label]] : [];
    }),
  );
}
