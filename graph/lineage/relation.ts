/**
 * What one queen is to another, as a code the screens put into words.
 *
 * From the nearest common dam, a steps above the first queen and b steps above the second:
 *
 *   a = 0, b = 0 self         a = 0, b = 1 dam          a = 1, b = 0 daughter
 *   a = 0, b = 2 granddam     a = 2, b = 0 granddaughter
 *   a = 0, b > 2 ancestor     a > 2, b = 0 descendant
 *   a = 1, b = 1 sister       a = 1, b = 2 aunt         a = 2, b = 1 niece
 *   a = 2, b = 2 cousin       otherwise common-dam
 *
 * Daughters of one dam are called sisters whether or not they share a father: under open mating nobody sees
 * which drone it was. Queens of different dams whose dams met a drone source in common are `drone-side`.
 * Source: common usage of the words; by the most probable dams. Cost O(generations + edges of the two dams).
 */
import { dams } from './dams.ts';
import { nearestCommonDam } from './nearest-common-dam.ts';
import type { RegistryGraph } from './registry-graph.ts';

export type RelationCode =
  | 'self'
  | 'dam'
  | 'daughter'
  | 'granddam'
  | 'granddaughter'
  | 'ancestor'
  | 'descendant'
  | 'sister'
  | 'aunt'
  | 'niece'
  | 'cousin'
  | 'common-dam'
  | 'drone-side'
  | 'none';

export interface Relation {
  /** What the first queen is to the second, by dams. */
  readonly code: RelationCode;
  /** Node key of the nearest common dam; absent for `drone-side` and `none`. */
  readonly commonDam?: string;
  /** Steps from the first and from the second queen up to the common dam; absent as above. */
  readonly fromFirst?: number;
  readonly fromSecond?: number;
  /** Probability (0..1] that the steps are right; 1 for `self`, `drone-side` and `none`. */
  readonly probability: number;
  /** Sisters or others out of one making event (the same split, the same graft). */
  readonly sameMaking: boolean;
  /** Pools and named drone mothers that possible dams of both met: relatives through the drones. */
  readonly sharedDroneSources: readonly string[];
}

const NEAR: Readonly<Record<string, RelationCode>> = {
  '0,0': 'self',
  '0,1': 'dam',
  '1,0': 'daughter',
  '0,2': 'granddam',
  '2,0': 'granddaughter',
  '1,1': 'sister',
  '1,2': 'aunt',
  '2,1': 'niece',
  '2,2': 'cousin',
};

/** What the first queen (node key) is to the second. */
export function relation(graph: RegistryGraph, first: string, second: string): Relation {
  const sameMaking = first !== second && shares(makings(graph, first), makings(graph, second)).length > 0;
  const sharedDroneSources =
    first === second ? [] : shares(fatherSources(graph, first), fatherSources(graph, second)).sort();
  const common = nearestCommonDam(graph, first, second);
  if (!common) {
    const code = sharedDroneSources.length > 0 ? 'drone-side' : 'none';
    return { code, probability: 1, sameMaking, sharedDroneSources };
  }
  const { key: commonDam, fromFirst, fromSecond, probability } = common;
  const code = codeOf(fromFirst, fromSecond);
  return { code, commonDam, fromFirst, fromSecond, probability, sameMaking, sharedDroneSources };
}

function codeOf(fromFirst: number, fromSecond: number): RelationCode {
  const near = NEAR[`${fromFirst},${fromSecond}`];
  if (near) return near;
  if (fromFirst === 0) return 'ancestor';
  return fromSecond === 0 ? 'descendant' : 'common-dam';
}

function makings(graph: RegistryGraph, queen: string): Set<string> {
  return targets(graph, queen, 'made-by');
}

/** Pools and drone mothers met by the possible dams of the queen. */
function fatherSources(graph: RegistryGraph, queen: string): Set<string> {
  const found = new Set<string>();
  for (const { dam } of dams(graph, queen)) {
    for (const source of targets(graph, dam, 'mated-in')) found.add(source);
  }
  return found;
}

function targets(graph: RegistryGraph, node: string, type: 'made-by' | 'mated-in'): Set<string> {
  const found = new Set<string>();
  graph.forEachOutboundEdge(node, (_edge, attributes, _source, target) => {
    if (attributes.type === type) found.add(target);
  });
  return found;
}

function shares(first: ReadonlySet<string>, second: ReadonlySet<string>): string[] {
  return [...first].filter((key) => second.has(key));
}
