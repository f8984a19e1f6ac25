/** `rank`: whom to breed from, by the weighted index of all traits. */
import { type NotRanked, notRanked, SMALL_GROUP, TRAITS, weightedIndex } from '../../graph/merit/index.ts';
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
  'not_ranked',
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

const WHY: Readonly<Record<NotRanked, string>> = {
  'no-record': 'no record that counts',
  'small-groups': 'compared with too few',
};

export const rankCommand: Command = {
  name: 'rank',
  files: ['FILE.damline.json'],
  options: [ON_OPTION, OUT_OPTION],
  notes: [
    `Prints ${COLUMNS.slice(0, COLUMNS.length - TRAITS.length).join(',')} and the breeding value of each trait in the trait's unit, best index first. ` +
      'Weights are those that the app suggests. Ranks of queens whose indexes lie within their standard errors of one ' +
      'another say nothing.',
    `A queen without a record in a comparison group of ${SMALL_GROUP} queens or more has no rank: she stands after the ranked, ` +
      `by name, and not_ranked says why ("${WHY['small-groups']}", "${WHY['no-record']}"). One record is enough for a rank; ` +
      'a reliability below 0.1 says that hardly anything is known.',
  ],
  async run(given, world) {
    const read = readRegistryFile(world, given);
    if (!read.ok) return read;
    const { registry, on } = read.value;
    const work = evaluationWork(registry, on, { sexAlleles: DEFAULT_SETTINGS.sexAlleles });
    const answer = evaluateWork(work);
    if (!answer) throw new Error('An evaluation that nobody stops comes to its end.');
    const { evaluation, diagonal, inbreeding, candidates } = answer;
    const weights = traitWeights(DEFAULT_SETTINGS);
    const index = weightedIndex(evaluation.traits, weights, diagonal);
    const why = notRanked(evaluation.traits, weights);
    const boxes = boxesOf(registry, on);
    const places = new Map<string, number>(evaluation.queens.map((id, at) => [id, at]));
    const title = (id: QueenId) => {
      const queen = registry.queens.get(id);
      return queen ? queenTitle(queen) : '';
    };
    const listed = candidates
      .flatMap((id) => {
        const at = places.get(id);
        const value = at === undefined ? undefined : index[at];
        return at === undefined || !value ? [] : [{ id: id as QueenId, at, value, because: why(id) }];
      })
      .sort((a, b) => {
        if (!a.because && !b.because) return b.value.index - a.value.index || (a.id < b.id ? -1 : 1);
        if (!a.because || !b.because) return a.because ? 1 : -1;
        return title(a.id).localeCompare(title(b.id), 'en') || (a.id < b.id ? -1 : 1);
      });
    const out = csvWriter(world.openOutput(given.options.get('out')), COLUMNS);
    for (const [place, { id, at, value, because }] of listed.entries()) {
      const fields = [
        because ? '' : String(place + 1),
        because ? WHY[because] : '',
        id,
        csvField(title(id)),
        csvField(boxes.get(id) ?? ''),
        csvField(title(work.lines.get(id) ?? id)),
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
