/** `inbreeding`: each queen's inbreeding and that of her brood. */
import { broodInbreedingOf, inbreedingOf } from '../../graph/kinship/inbreeding.ts';
import { type Command, OUT_OPTION } from './command.ts';
import { csvField, csvNumber, csvWriter } from './csv-write.ts';
import { PEDIGREE_NOTES, PEDIGREE_OPTIONS, readPedigree } from './pedigree-table.ts';

export const inbreedingCommand: Command = {
  name: 'inbreeding',
  files: ['PEDIGREE.csv'],
  options: [...PEDIGREE_OPTIONS, OUT_OPTION],
  notes: [
    ...PEDIGREE_NOTES,
    'Prints queen,inbreeding,brood_inbreeding, queens in the order of the table; the last is empty while a queen ' +
      'has not mated.',
  ],
  async run(given, world) {
    const read = readPedigree(world, given.positions[0] ?? '', given);
    if (!read.ok) return read;
    const { pedigree } = read;
    const out = csvWriter(world.openOutput(given.options.get('out')), [
      'queen',
      'inbreeding',
      'brood_inbreeding',
    ]);
    for (let queen = 0; queen < pedigree.queenIds.length; queen++) {
      const id = csvField(pedigree.queenIds[queen] ?? '');
      const own = csvNumber(inbreedingOf(pedigree, queen));
      const full = out.line(`${id},${own},${csvNumber(broodInbreedingOf(pedigree, queen))}`);
      if (full) await full;
    }
    await out.close();
    return { ok: true };
  },
};
