import { lookAhead, tradeOffCurve } from '../../graph/choice/index.ts';
import { randomGenerator } from '../../graph/numerics/random.ts';

/** Median milliseconds of a few runs after a warm-up. */
function median(work: () => unknown, runs = 5): number {
  work();
  const times = Array.from({ length: runs }, () => {
    const from = performance.now();
    work();
    return performance.now() - from;
  });
  return times.sort((a, b) => a - b)[Math.floor(runs / 2)] ?? Number.NaN;
}

/** Times of choosing and looking ahead. */
export function benchChoice(print: (line: string) => void = console.log): void {
  print(`trade-off curve of 60 candidates: ${median(curveOfSixty).toFixed(0)} ms`);
  print(`look-ahead, 15 colonies, 15 seasons, 200 histories: ${median(look, 3).toFixed(0)} ms`);
}

function curveOfSixty(): unknown {
  const random = randomGenerator(5);
  const rows = Array.from({ length: 60 }, () => Array.from({ length: 12 }, () => random.uniform()));
  const kinship = rows.flatMap((a, i) =>
    rows.map((b, j) => 0.02 * a.reduce((sum, each, k) => sum + each * (b[k] ?? 0), 0) + (i === j ? 0.4 : 0)),
  );
  return tradeOffCurve({ merit: rows.map(() => random.normal()), kinship, caps: rows.map(() => 0.3) });
}

function look(): unknown {
  return lookAhead({
    policy: {
      colonies: 15,
      breeders: 3,
      daughtersEach: 4,
      success: 0.5,
      requeened: 0.2,
      ownDrones: 0.3,
      droneMothers: 'all',
      mates: 12,
      winterLoss: 0.3,
      winterOnMerit: 0.5,
      reliability: 0.3,
    },
    founders: Array.from({ length: 12 }, (_, index) => ({ line: `line ${index % 4}` })),
    background: { merit: 0, kinship: 0.02, sexAlleles: 20 },
    variance: 1,
    seasons: 15,
    replicates: 200,
    seed: 1,
  });
}
