/** `check`: what contradicts what in a journal file. */
import { firstDay } from '../journal/day.ts';
import { kindTitle } from '../journal/entry.ts';
import type { Contradiction, Registry } from '../registry/state.ts';
import { type Command, OUT_OPTION } from './command.ts';
import { csvField, csvWriter } from './csv-write.ts';
import { readRegistryFile } from './registry-file.ts';

const COLUMNS = ['day', 'entry', 'kind', 'rule', 'found', 'because', 'remedy', 'overruled'] as const;

export const checkCommand: Command = {
  name: 'check',
  files: ['FILE.damline.json'],
  options: [OUT_OPTION],
  notes: [
    `Prints ${COLUMNS.join(',')}, one line for each contradiction, earliest first; an overruled one carries its reason. ` +
      'No line below the first means that nothing contradicts.',
    'A file that cannot be read as a journal is refused with every problem by its line, and exit code 2.',
  ],
  async run(given, world) {
    const read = readRegistryFile(world, given);
    if (!read.ok) return read;
    const { registry } = read.value;
    const out = csvWriter(world.openOutput(given.options.get('out')), COLUMNS);
    const kinds = new Map(registry.entries.map(({ id, kind }) => [id, kindTitle(kind)]));
    for (const contradiction of inOrder(registry)) {
      const { day, entry, code, found, because, remedies, overruled = '' } = contradiction;
      const fields = [day, entry, kinds.get(entry) ?? '', code, found, because, remedies[0] ?? '', overruled];
      const full = out.line(fields.map(csvField).join(','));
      if (full) await full;
    }
    await out.close();
    return { ok: true };
  },
};

function inOrder({ contradictions }: Registry): readonly Contradiction[] {
  return contradictions.toSorted((a, b) => {
    const [dayA, dayB] = [firstDay(a.day), firstDay(b.day)];
    return dayA < dayB ? -1 : dayA > dayB ? 1 : a.entry < b.entry ? -1 : 1;
  });
}
