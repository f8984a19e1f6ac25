/** `kinship`: the kinship of pairs of queens. */
import { kinshipColumns } from '../../graph/kinship/sweeps.ts';
import { type Command, OUT_OPTION } from './command.ts';
import { csvField, csvNumber, csvWriter } from './csv-write.ts';
import { PEDIGREE_NOTES, PEDIGREE_OPTIONS, readPedigree } from './pedigree-table.ts';
import { readQueenList } from './queen-list.ts';

export const kinshipCommand: Command = {
  name: 'kinship',
  files: ['PEDIGREE.csv'],
  options: [
    ...PEDIGREE_OPTIONS,
    {
      name: 'pairs',
      value: 'all|ID,ID,...',
      help: 'All queens (as without this option), or those whose pairs are wanted.',
    },
    OUT_OPTION,
  ],
  notes: [
    ...PEDIGREE_NOTES,
    'Prints queen_a,queen_b,kinship for every unordered pair, each queen with herself included, to 12 significant ' +
      'digits. Kinship is the probability that two genes, one of each queen, are copies of one gene; of a queen with ' +
      'herself it is (1 + inbreeding)/2.',
  ],
  async run(given, world) {
    const read = readPedigree(world, given.positions[0] ?? '', given);
    if (!read.ok) return read;
    const { pedigree } = read;
    const list = readQueenList(pedigree, 'pairs', given.options.get('pairs') ?? 'all');
    if (!list.ok) return list;
    const names = Array.from(list.queens, (queen) => csvField(pedigree.queenIds[queen] ?? ''));
    const nodes = list.queens.map((queen) => pedigree.queenNode[queen] ?? -1);
    const out = csvWriter(world.openOutput(given.options.get('out')), ['queen_a', 'queen_b', 'kinship']);
    let a = 0;
    for (const kinships of kinshipColumns(pedigree, nodes)) {
      for (let b = a; b < names.length; b++) {
        const full = out.line(`${names[a]},${names[b]},${csvNumber(kinships[b])}`);
        if (full) await full;
      }
      a++;
    }
    await out.close();
    return { ok: true };
  },
};
