/**
 * A guess at whose drones a virgin meets, from how far away the colonies stand.
 *
 *   F(r): share of matings with drones from within r; Weibull 1 - exp(-(r/scale)^shape) or lognormal
 *   w(r) = (F(r + h) - F(max(0, r - h))) / (pi ((r + h)^2 - max(0, r - h)^2))     [matings per square km of ring]
 *   share of a source of m colonies at distance r = m w(r) / (sum over sources of m w(r) + density)
 *
 * h: half width of the ring, 0.5 km; density: colonies per square km that nobody recorded, spread evenly (their
 * weight is the integral of density w over the plane, which is density).
 *
 * Source: Jensen et al. 2005, Conserv. Genet. 6:527 (abstract read): half of the matings within 2.5 km, 90 % within 7.5 km,
 * none beyond 15 km, in two valleys. Both kernels go through those two quantiles (derived here).
 * Caution: these are distances of matings that happened, where hills lie and apiaries stand as they did there; drone
 * and queen flight and the spacing of the apiaries are mixed in. Dividing by the area of the ring takes colonies as
 * evenly spread there. A rough guess, for a keeper who knows nothing better; weather, terrain and the number of
 * drones a colony flies are left out. Cost O(sources). Unknown density: no default; the caller asks.
 */
import { normalBelow, normalQuantile } from '../numerics/special.ts';

export interface DroneColonies {
  readonly id: string;
  /** Colonies that fly drones, 0 or more. */
  readonly colonies: number;
  readonly distanceKilometres: number;
}

export interface MatingKernel {
  /** Share (0..1) of matings with drones from within this distance (km). */
  readonly within: (kilometres: number) => number;
}

/** ln(ln 10 / ln 2) / ln 3: F(2.5) = 1/2 and F(7.5) = 9/10. */
const WEIBULL_SHAPE = Math.log(Math.log(10) / Math.LN2) / Math.log(3);
const WEIBULL_SCALE_KILOMETRES = 2.5 / Math.LN2 ** (1 / WEIBULL_SHAPE);

export const WEIBULL_KERNEL: MatingKernel = {
  within: (kilometres) =>
    kilometres <= 0 ? 0 : 1 - Math.exp(-((kilometres / WEIBULL_SCALE_KILOMETRES) ** WEIBULL_SHAPE)),
};

/** Median 2.5 km; ln 3 / (90 % point of the standard normal), so that F(7.5) = 9/10. */
const LOGNORMAL_SIGMA = Math.log(3) / normalQuantile(0.9);

export const LOGNORMAL_KERNEL: MatingKernel = {
  within: (kilometres) => (kilometres <= 0 ? 0 : normalBelow(Math.log(kilometres / 2.5) / LOGNORMAL_SIGMA)),
};

export interface MatingDistanceOptions {
  readonly kernel: MatingKernel;
  /** Half width of the ring over which the kernel is averaged, km. */
  readonly halfWidthKilometres: number;
}

export const MATING_DISTANCE_DEFAULTS: MatingDistanceOptions = {
  kernel: WEIBULL_KERNEL,
  halfWidthKilometres: 0.5,
};

export interface DroneShares {
  /** Share (0..1) of each source, in the order given. */
  readonly shares: readonly { readonly of: string; readonly share: number }[];
  /** Share (0..1) of colonies that nobody recorded. */
  readonly unrecorded: number;
}

/**
 * Shares of the drones by distance. `colonyDensity`: unrecorded colonies per square km, 0 or more. Undefined when
 * there is no colony at all.
 */
export function droneSharesByDistance(
  sources: readonly DroneColonies[],
  colonyDensity: number,
  options: Partial<MatingDistanceOptions> = {},
): DroneShares | undefined {
  const { kernel, halfWidthKilometres } = { ...MATING_DISTANCE_DEFAULTS, ...options };
  const weights = sources.map(
    ({ colonies, distanceKilometres }) =>
      colonies * perSquareKilometre(kernel, distanceKilometres, halfWidthKilometres),
  );
  const total = weights.reduce((sum, weight) => sum + weight, colonyDensity);
  if (!(total > 0)) return undefined;
  return {
    shares: sources.map(({ id }, k) => ({ of: id, share: weights[k]! / total })),
    unrecorded: colonyDensity / total,
  };
}

/** Share of matings per square km at a distance, averaged over a ring. */
export function perSquareKilometre(kernel: MatingKernel, kilometres: number, halfWidth: number): number {
  const inner = Math.max(0, kilometres - halfWidth);
  const outer = kilometres + halfWidth;
  return (kernel.within(outer) - kernel.within(inner)) / (Math.PI * (outer * outer - inner * inner));
}
