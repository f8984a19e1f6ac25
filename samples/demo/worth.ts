import type { Random } from '../../graph/numerics/random.ts';

/**
 * The hidden truth behind the demo: what each invented queen is worth, in standard deviations of the trait. Lines
 * differ from the start, daughters are half their dam and half a drone she met, and every colony shows the mean of
 * its queen and her mates, with luck on top. Nothing of this is in the journal; only what it brings about is.
 */
const QUALITIES = [
  'hardy',
  'buildUp',
  'gentle',
  'calm',
  'staying',
  'mites',
  'hygiene',
  'brood',
  'honey',
] as const;
export type Quality = (typeof QUALITIES)[number];
export type Worth = Readonly<Record<Quality, number>>;

/** Where the four founders stand, and the bees around the yards: nothing above or below the common run. */
export const FOUNDERS = {
  Hazel: {
    hardy: 1.8,
    buildUp: -0.2,
    gentle: -0.7,
    calm: -0.4,
    staying: 0.9,
    mites: 1.4,
    hygiene: 1.3,
    brood: 0.4,
    honey: 0,
  },
  Sorrel: {
    hardy: 0.3,
    buildUp: 0.3,
    gentle: 1.7,
    calm: 1.5,
    staying: 0.3,
    mites: -0.2,
    hygiene: -0.3,
    brood: 0.6,
    honey: 1.5,
  },
  Linden: {
    hardy: -1.9,
    buildUp: 1.4,
    gentle: 1,
    calm: 0.9,
    staying: -2,
    mites: -1.4,
    hygiene: -1.1,
    brood: 0.2,
    honey: 0.6,
  },
  Vagrant: {
    hardy: 0.3,
    buildUp: -0.1,
    gentle: -1.7,
    calm: -2,
    staying: -0.8,
    mites: 1,
    hygiene: 0.6,
    brood: -0.6,
    honey: -0.4,
  },
} as const satisfies Record<string, Worth>;

const MENDELIAN = 0.45;
/** A founder had met mostly her own kind before records began. */
const FOUNDERS_OWN_KIND = 0.7;
const MATES_LUCK = 0.2;

export function worth(of: (quality: Quality) => number): Worth {
  return Object.fromEntries(QUALITIES.map((quality) => [quality, of(quality)])) as Worth;
}

/** A daughter: half her dam, half the drones her dam met, and the luck of the draw. */
export function daughterWorth(dam: Worth, damsMates: Worth, random: Random): Worth {
  return worth((quality) => (dam[quality] + damsMates[quality]) / 2 + MENDELIAN * random.normal());
}

/** The drones of a mating: the mean of the drone mothers by their share, the rest being bees of the country. */
export function matesWorth(droneMothers: readonly Worth[], ownShare: number, random: Random): Worth {
  return worth((quality) => {
    const sum = droneMothers.reduce((total, mother) => total + mother[quality], 0);
    const own = droneMothers.length > 0 ? sum / droneMothers.length : 0;
    return ownShare * own + MATES_LUCK * random.normal();
  });
}

export function foundersMates(founder: Worth, random: Random): Worth {
  return matesWorth([founder], FOUNDERS_OWN_KIND, random);
}

/** What the workers of a colony show: their mother's half and their fathers'. */
export function workersWorth(queen: Worth, mates: Worth): Worth {
  return worth((quality) => (queen[quality] + mates[quality]) / 2);
}
