/**
 * The independent judge of the kinship engine: genes dropped through a pedigree by lot, one locus, many times, sharing
 * no code with it but the seeded generator. Kinship is how often two genes drawn from two queens are copies of one
 * gene of the base; inbreeding, how often a queen's own two are.
 *
 * Rules played: a background's gamete carries the population's common gene with chance sqrt(theta), otherwise a gene
 * of its own, so that two gametes agree with chance theta; a queen has a gamete of her dam and one of her dam's
 * drones; each dam's drones are drawn once, from their mothers and backgrounds by their shares; a drone is one gamete.
 */
import type { MatingInput, PedigreeInput, QueenInput, Share } from '../../graph/kinship/pedigree-input.ts';
import { type Random, randomGenerator } from '../../graph/numerics/random.ts';

/** Running mean and variance of one figure. */
export interface Estimate {
  readonly mean: number;
  readonly standardError: number;
}

export interface GeneDrop {
  readonly kinship: (a: string, b: string) => Estimate;
  readonly inbreeding: (queen: string) => Estimate;
  readonly broodInbreeding: (queen: string) => Estimate | undefined;
}

/** Drones of one mating in one replicate: their genes, and the share of daughters of each. */
interface Drones {
  readonly genes: readonly number[];
  readonly shares: readonly number[];
}

/** Sperm shares whose sum of squares is 1/n: equal for a whole n, one larger than the others otherwise. */
export function spermShares(effectiveMates: number): number[] {
  const mates = Math.ceil(effectiveMates);
  if (mates === 1) return [1];
  const excess = Math.sqrt((1 / effectiveMates - 1 / mates) * (1 - 1 / mates));
  const first = 1 / mates + excess;
  return [first, ...new Array<number>(mates - 1).fill((1 - first) / (mates - 1))];
}

/**
 * `sexAlleles`: the number of equally frequent sex alleles of each background. With it the genes are those of the sex
 * locus, where an egg with two like ones never becomes a queen, and the brood inbreeding told is the share of brood lost.
 */
export function dropGenes(
  input: PedigreeInput,
  replicates: number,
  seed: number,
  sexAlleles?: ReadonlyMap<string, number>,
): GeneDrop {
  const random = randomGenerator(seed);
  const ids = input.queens.map(({ id }) => id);
  const sums = new Map<string, { sum: number; squares: number }>();
  const note = (figure: string, value: number): void => {
    const entry = sums.get(figure) ?? { sum: 0, squares: 0 };
    entry.sum += value;
    entry.squares += value * value;
    sums.set(figure, entry);
  };
  for (let replicate = 0; replicate < replicates; replicate++) {
    const { genesOf, dronesOf } = replicateOf(input, random, sexAlleles);
    ids.forEach((a, k) => {
      const [first, second] = genesOf(a);
      note(`inbreeding ${a}`, first === second ? 1 : 0);
      const drones = dronesOf(a);
      if (drones) note(`brood ${a}`, chanceOfAgreement([first, second], drones));
      for (const b of ids.slice(k)) note(`kinship ${a} ${b}`, agreement(genesOf(a), genesOf(b)));
    });
  }
  const estimate = (figure: string): Estimate | undefined => {
    const entry = sums.get(figure);
    if (!entry) return undefined;
    const mean = entry.sum / replicates;
    const variance = Math.max(0, entry.squares / replicates - mean * mean);
    return { mean, standardError: Math.sqrt(variance / replicates) };
  };
  return {
    kinship: (a, b) => (estimate(`kinship ${a} ${b}`) ?? estimate(`kinship ${b} ${a}`))!,
    inbreeding: (queen) => estimate(`inbreeding ${queen}`)!,
    broodInbreeding: (queen) => estimate(`brood ${queen}`),
  };
}

type Genes = readonly [number, number];

function agreement([a, b]: Genes, [c, d]: Genes): number {
  return (Number(a === c) + Number(a === d) + Number(b === c) + Number(b === d)) / 4;
}

function chanceOfAgreement([a, b]: Genes, { genes, shares }: Drones): number {
  return genes.reduce(
    (sum, gene, k) => sum + (shares[k]! * (Number(gene === a) + Number(gene === b))) / 2,
    0,
  );
}

/** One replicate: genes of queens and of the drones they met, drawn when first asked for and then kept. */
function replicateOf(input: PedigreeInput, random: Random, sexAlleles?: ReadonlyMap<string, number>) {
  let nextGene = input.backgrounds.length;
  const queenInputs = new Map(input.queens.map((queen) => [queen.id, queen]));
  const queens = new Map<string, Genes>();
  const drones = new Map<string, number>();
  const matings = new Map<string, Drones>();
  const ofBackground = (id: string): number => {
    if (sexAlleles) return random.integer(sexAlleles.get(id)!);
    const number = input.backgrounds.findIndex((background) => background.id === id);
    return random.uniform() < Math.sqrt(input.backgrounds[number]!.kinship) ? number : nextGene++;
  };
  const pick = (shares: readonly Share[]): string =>
    shares[random.weighted(shares.map(({ share }) => share))]!.of;
  const gameteOf = (id: string): number => genesOf(id)[random.integer(2)]!;
  const knownDrone = (id: string): number => {
    const known = drones.get(id);
    if (known !== undefined) return known;
    const gene = gameteOf(input.drones.find((drone) => drone.id === id)!.mother);
    drones.set(id, gene);
    return gene;
  };
  const flown = ({
    droneMothers,
    backgrounds,
  }: {
    droneMothers: readonly Share[];
    backgrounds: readonly Share[];
  }) => {
    const source = pick([...droneMothers, ...backgrounds]);
    return droneMothers.some(({ of }) => of === source) ? gameteOf(source) : ofBackground(source);
  };
  const meet = (key: string, dam: QueenInput, mating: MatingInput): Drones => {
    const known = matings.get(key);
    if (known) return known;
    const shares =
      mating.kind === 'drones' ? mating.drones.map(({ share }) => share) : spermShares(dam.effectiveMates);
    const lists = mating.kind === 'pool' ? input.pools.find(({ id }) => id === mating.pool)! : mating;
    const genes = shares.map((_, k) =>
      'droneMothers' in lists
        ? flown(lists)
        : knownDrone((lists as { drones: readonly Share[] }).drones[k]!.of),
    );
    const met = { genes, shares };
    matings.set(key, met);
    return met;
  };
  const dronesOf = (id: string): Drones | undefined => {
    const dam = queenInputs.get(id)!;
    return dam.mating && meet(id, dam, dam.mating);
  };
  const founded = (background: string): Genes => [ofBackground(background), ofBackground(background)];
  const bred = (id: string, father: MatingInput | undefined) => {
    const dam = queenInputs.get(id)!;
    const met = father ? meet(`${dam.id} ${JSON.stringify(father)}`, dam, father) : dronesOf(dam.id)!;
    return (): Genes => [gameteOf(dam.id), met.genes[random.weighted(met.shares)]!];
  };
  function genesOf(id: string): Genes {
    const known = queens.get(id);
    if (known) return known;
    const { dams, background, father } = queenInputs.get(id)!;
    const draw = dams.length === 0 ? () => founded(background) : bred(pick(dams), father);
    let genes = draw();
    while (sexAlleles && genes[0] === genes[1]) genes = draw();
    queens.set(id, genes);
    return genes;
  }
  return { genesOf, dronesOf };
}
