import { compilePedigree } from '../../graph/kinship/compile.ts';
import type { Pedigree } from '../../graph/kinship/pedigree.ts';
import type {
  BackgroundInput,
  MatingInput,
  PedigreeInput,
  QueenInput,
  Share,
} from '../../graph/kinship/pedigree-input.ts';
import { pedigreeProblemText } from '../../graph/kinship/problems.ts';
import type { EntryOf } from '../journal/entry.ts';
import { queensInCircles } from './circles.ts';
import { type DronePool, dronePools, EFFECTIVE_MATES, matingOf, UNRECORDED } from './pools.ts';
import { droneKey, type Queen, type Registry } from './state.ts';

/**
 * The registry as the numerics want it. What is not known of a dam becomes a queen nobody recorded, drawn from the
 * background; who she is for one daughter says nothing of another.
 */
export function pedigreeInput(registry: Registry): PedigreeInput {
  const pools = dronePools(registry);
  const circles = queensInCircles(registry);
  const backgrounds = new Set<string>([UNRECORDED]);
  const queens: QueenInput[] = [];
  for (const queen of registry.queens.values()) {
    const background = queen.background ?? UNRECORDED;
    backgrounds.add(background);
    const dams = circles.has(queen.id) ? [] : possibleDams(registry, queen);
    const missing = 1 - dams.reduce((sum, { share }) => sum + share, 0);
    if (dams.length > 0 && missing > 1e-9) {
      const nobody = `unrecorded dam of ${queen.id}`;
      queens.push({
        id: nobody,
        dams: [],
        background,
        mating: wild(background),
        effectiveMates: EFFECTIVE_MATES,
      });
      dams.push({ of: nobody, share: missing });
    }
    queens.push({ id: queen.id, dams, background, ...matingInput(registry, queen) });
  }
  mateEveryDam(queens);
  for (const pool of pools.values()) backgrounds.add(pool.background);
  for (const said of registry.droneBackgrounds.values()) backgrounds.add(said.background);
  for (const { mating } of queens) {
    if (mating?.kind === 'drone-mothers') for (const { of } of mating.backgrounds) backgrounds.add(of);
  }
  return {
    backgrounds: [...backgrounds].sort().map((id) => backgroundInput(registry, id)),
    pools: [...pools.values()].map(poolInput),
    drones: [],
    queens,
  };
}

/** A dam who is not known to have mated all the same did: with the background. */
function mateEveryDam(queens: QueenInput[]): void {
  const dams = new Set(queens.flatMap((queen) => queen.dams.map(({ of }) => of)));
  queens.forEach((queen, index) => {
    if (!queen.mating && dams.has(queen.id)) queens[index] = { ...queen, mating: wild(queen.background) };
  });
}

/** A pedigree without loops, and the queens whose mating or dam had to be taken as unknown for it. */
export interface OpenedPedigree {
  readonly input: PedigreeInput;
  readonly pedigree: Pedigree;
  readonly cut: readonly string[];
}

/**
 * The pedigree of a registry with loops opened, and compiled. Days that contradict one another can make a queen descend
 * from drones of her own descendants; the mating of a queen on such a loop is then taken as unknown, and if that does
 * not open it, her dam.
 */
export function openedPedigreeInput(registry: Registry): OpenedPedigree {
  const cut = new Set<string>();
  let input = pedigreeInput(registry);
  for (;;) {
    const compiled = compilePedigree(input);
    if (compiled.ok) return { input, pedigree: compiled.pedigree, cut: [...cut] };
    const loops = compiled.problems.filter(({ code }) => code === 'cycle');
    if (loops.length === 0) throw new Error(compiled.problems.map(pedigreeProblemText).join('\n'));
    const caught = new Set(loops.map(({ record }) => record));
    input = {
      ...input,
      queens: input.queens.map((queen) => (caught.has(queen.id) ? opened(queen, cut) : queen)),
    };
  }
}

function opened(queen: QueenInput, cut: Set<string>): QueenInput {
  const again = cut.has(queen.id);
  cut.add(queen.id);
  return { ...queen, mating: wild(queen.background), ...(again ? { dams: [] } : {}) };
}

/** Possible dams on record, scaled down where careless probabilities come to more than 1. */
function possibleDams(registry: Registry, queen: Queen): Share[] {
  const dams = (queen.parentage?.dams ?? []).filter(
    ({ queen: id, probability }) => probability > 0 && registry.queens.has(id),
  );
  const sum = dams.reduce((total, { probability }) => total + probability, 0);
  return dams.map(({ queen: of, probability }) => ({ of, share: sum > 1 ? probability / sum : probability }));
}

function wild(background: string): MatingInput {
  return { kind: 'drone-mothers', droneMothers: [], backgrounds: [{ of: background, share: 1 }] };
}

function matingInput(registry: Registry, queen: Queen): { mating?: MatingInput; effectiveMates: number } {
  const effectiveMates = queen.mating?.effectiveMates ?? EFFECTIVE_MATES;
  const unmated = queen.state.is === 'expected' || queen.state.is === 'failed';
  if (unmated && queen.daughters.length === 0) return { effectiveMates };
  const facts = matingOf(registry, queen);
  if (facts.kind === 'pool')
    return { mating: { kind: 'pool', pool: droneKey(facts.yard, facts.season) }, effectiveMates };
  if (facts.kind === 'unrecorded') return { mating: wild(facts.background), effectiveMates };
  return namedMating(registry, facts.entry, effectiveMates);
}

function namedMating(
  registry: Registry,
  { way }: EntryOf<'mating'>,
  effectiveMates: number,
): { mating: MatingInput; effectiveMates: number } {
  if (way.manner === 'open') throw new Error('An open mating is a pool, never named drone mothers.');
  const known = way.droneMothers.filter(({ queen }) => registry.queens.has(queen));
  const sum = known.reduce((total, { share }) => total + share, 0);
  const scale = sum > 1 || way.manner === 'insemination' ? 1 / (sum || 1) : 1;
  const droneMothers = known.map(({ queen: of, share }) => ({ of, share: share * scale }));
  const rest = 1 - droneMothers.reduce((total, { share }) => total + share, 0);
  const background = (way.manner === 'station' ? way.background : undefined) ?? UNRECORDED;
  return {
    mating: {
      kind: 'drone-mothers',
      droneMothers,
      backgrounds: rest > 1e-9 ? [{ of: background, share: rest }] : [],
    },
    effectiveMates: way.manner === 'insemination' && way.singleDrone ? 1 : effectiveMates,
  };
}

function poolInput(pool: DronePool): PedigreeInput['pools'][number] {
  const own = pool.droneMothers.reduce((sum, { share }) => sum + share, 0);
  return {
    id: pool.key,
    droneMothers: pool.droneMothers.map(({ queen: of, share }) => ({ of, share })),
    backgrounds: own < 1 - 1e-9 ? [{ of: pool.background, share: 1 - own }] : [],
  };
}

/** Kinship within a background as last stated for it; 0 (unrelated gametes) where nobody has said. */
function backgroundInput(registry: Registry, id: string): BackgroundInput {
  let kinship = 0;
  let season = Number.NEGATIVE_INFINITY;
  for (const said of registry.droneBackgrounds.values()) {
    if (said.background !== id || said.backgroundKinship === undefined || said.season < season) continue;
    kinship = said.backgroundKinship;
    season = said.season;
  }
  return { id, kinship };
}
