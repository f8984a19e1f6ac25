/** Observations of invented colonies for the tests of traits, written short. */
import type {
  HarvestObservation,
  HygienicObservation,
  InspectionObservation,
  MiteCountObservation,
  TraitObservation,
  WinterObservation,
} from '../../graph/merit/observations.ts';

/** Days since 1970-01-01 of 1 May 2025, a Thursday. */
export const FIRST_OF_MAY = 20_209;

interface Common {
  readonly id?: string;
  readonly day?: number;
  readonly dayExact?: boolean;
  readonly yard?: string | undefined;
  readonly season?: number;
  readonly workers?: TraitObservation['workers'];
}

let made = 0;

function common(queen: string, { yard = 'mill', ...given }: Common) {
  made += 1;
  return {
    id: `o${made}`,
    day: FIRST_OF_MAY,
    dayExact: true,
    colony: `colony of ${queen}`,
    season: 2025,
    workers: { known: true, queen } as const,
    yard,
    ...given,
  };
}

export function inspection(
  queen: string,
  seen: Pick<
    InspectionObservation,
    'gentle' | 'calm' | 'swarmTendency' | 'framesOfBees' | 'framesOfBrood' | 'broodPattern'
  >,
  given: Common = {},
): InspectionObservation {
  return { kind: 'inspection', ...common(queen, given), ...seen };
}

export function wash(
  queen: string,
  mites: number,
  bees = 300,
  given: Common & { readonly treatment?: MiteCountObservation['treatment'] } = {},
): MiteCountObservation {
  const { treatment, ...rest } = given;
  return {
    kind: 'mite-count',
    ...common(queen, rest),
    sample: { method: 'wash', mites, bees },
    ...(treatment ? { treatment } : {}),
  };
}

export function winter(
  queen: string,
  alive: boolean,
  given: Common & Pick<WinterObservation, 'cause' | 'autumnFramesOfBees' | 'springFramesOfBees'> = {},
): WinterObservation {
  const { cause, autumnFramesOfBees, springFramesOfBees, ...rest } = given;
  return {
    kind: 'winter',
    ...common(queen, rest),
    alive,
    ...(cause ? { cause } : {}),
    ...(autumnFramesOfBees === undefined ? {} : { autumnFramesOfBees }),
    ...(springFramesOfBees === undefined ? {} : { springFramesOfBees }),
  };
}

export function hygienicTest(
  queen: string,
  notCleared: number,
  hours = 24,
  given: Common = {},
): HygienicObservation {
  return { kind: 'hygienic-test', ...common(queen, given), method: 'pin', cells: 50, notCleared, hours };
}

export function harvest(queen: string, kilograms: number, given: Common = {}): HarvestObservation {
  return { kind: 'harvest', ...common(queen, given), kilograms };
}
