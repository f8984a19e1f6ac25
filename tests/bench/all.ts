/**
 * The benches: figures of this machine, printed; none fails on time. `npm run bench` runs all, `npm run bench -- scale`
 * those whose name holds a word.
 */
interface Bench {
  readonly name: string;
  readonly title: string;
  readonly run: () => Promise<void>;
}

export const BENCHES: readonly Bench[] = [
  {
    name: 'scale',
    title: 'Engine by size of the registry',
    run: async () => (await import('./scale.ts')).benchScale(),
  },
  {
    name: 'command-line',
    title: 'Command line, tables of 100,000 queens',
    run: async () => (await import('./command-line.ts')).benchCommandLine(),
  },
  {
    name: 'demo-yard',
    title: "The demo yard's whole evaluation",
    run: async () => (await import('./demo-yard.ts')).benchDemoYard(),
  },
  {
    name: 'projection',
    title: 'Journal to state',
    run: async () => (await import('./projection.ts')).benchProjection(),
  },
  {
    name: 'choice',
    title: 'Choosing, looking ahead',
    run: async () => (await import('./choice.ts')).benchChoice(),
  },
  {
    name: 'bundle',
    title: 'Built app',
    run: async () => (await import('./bundle.ts')).benchBundle(),
  },
];

const words = process.argv.slice(2);
for (const { name, title, run } of BENCHES) {
  if (words.length > 0 && !words.some((word) => name.includes(word))) continue;
  console.log(`\n${title} (${name})`);
  try {
    await run();
  } catch (error) {
    console.log(`could not be run: ${error instanceof Error ? error.message : String(error)}`);
    process.exitCode = 1;
  }
}
