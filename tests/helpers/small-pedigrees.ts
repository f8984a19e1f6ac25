/** Small compiled pedigrees for the tests, written as short rows. */
import { compilePedigree } from '../../graph/kinship/compile.ts';
import type { Pedigree } from '../../graph/kinship/pedigree.ts';
import type {
  BackgroundInput,
  DronePoolInput,
  QueenInput,
  Share,
} from '../../graph/kinship/pedigree-input.ts';

export interface PedigreeRow {
  readonly id: string;
  readonly dam?: string;
  /** Queens and backgrounds whose drones she met, with shares; one name alone has them all. */
  readonly met?: string | Readonly<Record<string, number>>;
  /** A named pool she met, instead of `met`. */
  readonly pool?: string;
  /** Single drones she met, with shares, instead of `met`. */
  readonly drones?: Readonly<Record<string, number>>;
  readonly mates?: number;
  /** Background of a founder; 'base' when absent. */
  readonly background?: string;
}

export interface PedigreeRows {
  readonly queens: readonly PedigreeRow[];
  readonly pools?: Readonly<Record<string, Readonly<Record<string, number>>>>;
  /** Mother of each single drone. */
  readonly drones?: Readonly<Record<string, string>>;
  /** Kinship of each background; 'base' with 0 when absent. */
  readonly backgrounds?: Readonly<Record<string, number>>;
}

export function smallPedigree({
  queens,
  pools = {},
  drones = {},
  backgrounds = { base: 0 },
}: PedigreeRows): Pedigree {
  const split = (shares: Readonly<Record<string, number>>) => splitShares(shares, backgrounds);
  const compiled = compilePedigree({
    backgrounds: Object.entries(backgrounds).map(([id, kinship]): BackgroundInput => ({ id, kinship })),
    pools: Object.entries(pools).map(([id, shares]): DronePoolInput => ({ id, ...split(shares) })),
    drones: Object.entries(drones).map(([id, mother]) => ({ id, mother })),
    queens: queens.map((row) => queenInput(row, split)),
  });
  if (!compiled.ok)
    throw new Error(compiled.problems.map((problem) => `${problem.record}: ${problem.found}`).join('\n'));
  return compiled.pedigree;
}

function splitShares(
  shares: Readonly<Record<string, number>>,
  backgrounds: Readonly<Record<string, number>>,
) {
  const list = Object.entries(shares).map(([of, share]): Share => ({ of, share }));
  return {
    droneMothers: list.filter(({ of }) => !(of in backgrounds)),
    backgrounds: list.filter(({ of }) => of in backgrounds),
  };
}

function queenInput(
  row: PedigreeRow,
  split: (shares: Readonly<Record<string, number>>) => ReturnType<typeof splitShares>,
): QueenInput {
  const mating = matingOf(row, split);
  return {
    id: row.id,
    dams: row.dam === undefined ? [] : [{ of: row.dam, share: 1 }],
    background: row.background ?? 'base',
    effectiveMates: row.mates ?? 12,
    ...(mating ? { mating } : {}),
  };
}

function matingOf(
  row: PedigreeRow,
  split: (shares: Readonly<Record<string, number>>) => ReturnType<typeof splitShares>,
): QueenInput['mating'] {
  if (row.pool !== undefined) return { kind: 'pool', pool: row.pool };
  if (row.drones)
    return { kind: 'drones', drones: Object.entries(row.drones).map(([of, share]) => ({ of, share })) };
  if (row.met === undefined) return undefined;
  return { kind: 'drone-mothers', ...split(typeof row.met === 'string' ? { [row.met]: 1 } : row.met) };
}

/** A queen, her dam's relatives and a super-sister: the mates one can name for a virgin V of dam D. */
export const RELATIVES: PedigreeRows = {
  queens: [
    { id: 'G', met: 'base' },
    { id: 'D', dam: 'G', drones: { d: 1 } },
    { id: 'S', met: 'base' },
    { id: 'V', dam: 'D' },
    { id: 'super', dam: 'D' },
    { id: 'E', met: 'base', mates: 1_000_000_000 },
    { id: 'half', dam: 'E' },
    { id: 'H', dam: 'E' },
  ],
  drones: { d: 'S' },
};
