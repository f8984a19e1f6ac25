import { wintersTold } from '../../../src/exchange/pedigree/words.ts';
import type { PlainDay } from '../../../src/journal/day.ts';
import type { QueenId } from '../../../src/journal/ids.ts';
import { matingOf } from '../../../src/registry/pools.ts';
import { queenTitle } from '../../../src/registry/queries.ts';
import type { Queen, Registry } from '../../../src/registry/state.ts';
import { lineFacts } from '../../lines/facts.ts';
import type { Life } from '../../lines/lives.ts';
import { wintersText } from '../../lines/words.ts';
import { bornText, endText, madeText } from '../../parts/queen-words.ts';
import { list, sentence } from '../../parts/words.ts';

/** One dam on the card. */
export interface CardDam {
  readonly id: QueenId;
  readonly born: string;
  readonly winters: string;
  /** How sure it is that she is the dam of the queen above her: "firm", "70 %". */
  readonly sure: string;
}

/** What stands on the pedigree card of a queen. */
export interface CardFacts {
  readonly queen: Queen;
  readonly title: string;
  /** When she emerged, how she was made and mated, what became of her. */
  readonly about: string;
  readonly winters: string;
  /** Her dam, her dam's dam and so on up to the founder. */
  readonly dams: readonly CardDam[];
  /** Dams left out in the middle of a long line; they would stand after the first half of `dams`. */
  readonly damsLeftOut: number;
  /** What is known beyond the last of them. */
  readonly beyond: string;
  /** How sure the dam line is as a whole. */
  readonly whole: string;
  /** For the drawing: dams with her, and her latest daughters, as many as a page holds. */
  readonly lives: readonly Life[];
  readonly daughters: readonly Life[];
  readonly hue: number;
}

/** As many as leave the card on one page. */
const MOST_DAMS = 12;
const MOST_DAUGHTERS = 8;

export interface CardOptions {
  readonly on: PlainDay;
  readonly hideYards: boolean;
}

export function cardFacts(registry: Registry, queen: Queen, { on, hideYards }: CardOptions): CardFacts {
  const { byId, lines } = lineFacts(registry, on);
  const line = damLine(byId, queen.id);
  const daughters = [...byId.values()]
    .filter(({ dam }) => dam === queen.id)
    .sort((a, b) => a.start - b.start || (a.id < b.id ? -1 : 1));
  const her = line[0];
  const oldest = line.at(-1);
  const all = line.slice(1).map((life, step) => damOf(registry, life, line[step]));
  const half = MOST_DAMS / 2;
  const dams = all.length > MOST_DAMS ? [...all.slice(0, half), ...all.slice(-half)] : all;
  return {
    queen,
    title: sentence(queenTitle(queen)),
    about: aboutHer(registry, queen, on, hideYards),
    winters: wintersWords(queen, her?.winters ?? []),
    dams,
    damsLeftOut: all.length - dams.length,
    beyond: beyondWords(registry, queen, oldest),
    whole: wholeWords(line),
    lives: [...line.toReversed(), ...daughters.slice(-MOST_DAUGHTERS)],
    daughters,
    hue: lines.find((each) => each.line === her?.line)?.hue ?? 1,
  };
}

/** She and her likely dams up to the founder. */
function damLine(byId: ReadonlyMap<QueenId, Life>, queen: QueenId): readonly Life[] {
  const line: Life[] = [];
  for (let at = byId.get(queen); at; at = at.dam ? byId.get(at.dam) : undefined) line.push(at);
  return line;
}

function damOf(registry: Registry, dam: Life, daughter: Life | undefined): CardDam {
  const born = registry.queens.get(dam.id)?.born;
  const [first, last] = [born?.first.slice(0, 4), born?.last.slice(0, 4)];
  return {
    id: dam.id,
    born: !first ? 'not known' : first === last ? first : `${first} or ${last}`,
    winters: damWinters(registry.queens.get(dam.id), dam.winters),
    sure: daughter?.certainty === 'firm' ? 'firm' : shareText(daughter?.damProbability),
  };
}

/** Of a queen who was told of, and never stood in a colony on record, it is not known which winters she crossed. */
function wintersWords(queen: Queen, winters: readonly number[]): string {
  if (winters.length > 0) return `Crossed ${wintersText(winters)}.`;
  const told = wintersTold(queen);
  if (told) return `Crossed the ${told.includes(' and ') ? 'winters' : 'winter'} ${told}, as told.`;
  return queen.tenures.length > 0 ? 'No winter crossed yet.' : 'Which winters she crossed is not on record.';
}

function damWinters(dam: Queen | undefined, winters: readonly number[]): string {
  if (winters.length > 0) return wintersText(winters).replace(/^winters? /, '');
  const told = dam && wintersTold(dam);
  if (told) return told;
  return dam && dam.tenures.length > 0 ? 'none' : 'not on record';
}

function shareText(share: number | undefined): string {
  return share === undefined ? 'not known' : `${Math.round(100 * share)}\u00a0%`;
}

function aboutHer(registry: Registry, queen: Queen, on: PlainDay, hideYards: boolean): string {
  const making = queen.madeBy && registry.makings.get(queen.madeBy);
  const made = making && making.how !== 'brought-in' ? madeText(making) : undefined;
  const end = endText({ state: untoldReceiver(queen.state) });
  const parts = [bornText(queen, on), made, matedText(registry, queen, hideYards), end];
  return parts
    .filter((part) => part !== undefined)
    .map((part) => `${sentence(part)}.`)
    .join(' ');
}

/** To whom a queen was given is another's affair: the card does not say. */
function untoldReceiver(state: Queen['state']): Queen['state'] {
  if (state.is !== 'gone') return state;
  const { to: _, ...rest } = state;
  return rest;
}

/** How she mated. Yards and stations are named only where they may be told. */
function matedText(registry: Registry, queen: Queen, hideYards: boolean): string | undefined {
  const mating = matingOf(registry, queen);
  if (mating.kind === 'unrecorded') return undefined;
  if (mating.kind === 'pool') {
    const yard = hideYards ? undefined : registry.yards.get(mating.yard)?.name;
    return `mated in the open${yard ? ` at ${yard}` : ''} in ${mating.season}`;
  }
  const { way } = mating.entry;
  if (way.manner === 'open') return undefined;
  const mothers = way.droneMothers.map(({ queen: id }) => {
    const mother = registry.queens.get(id);
    return mother ? queenTitle(mother) : 'a queen without records';
  });
  const drones = mothers.length > 0 ? ` with drones of ${list(mothers)}` : '';
  if (way.manner === 'insemination') return `inseminated${drones}`;
  return `mated at ${hideYards ? 'a station' : `the station ${way.station}`}${drones}`;
}

function beyondWords(registry: Registry, queen: Queen, oldest: Life | undefined): string {
  const founder = oldest && registry.queens.get(oldest.id);
  const who = !founder || founder.id === queen.id ? 'She' : sentence(queenTitle(founder));
  if (founder?.background) return `${who} is the founder, out of ${founder.background}.`;
  if (founder?.from) return `${who} is the founder, from ${founder.from}; her dam is not known.`;
  return `${who} is the founder; her dam is not known.`;
}

function wholeWords(line: readonly Life[]): string {
  const her = line[0];
  const steps = line.length - 1;
  if (!her || steps < 1) return '';
  const weak = line.slice(0, -1).filter(({ certainty }) => certainty !== 'firm').length;
  if (weak === 0)
    return steps === 1 ? 'The step to her dam is firm.' : `All ${steps} steps of her dam line are firm.`;
  return `${weak} of ${steps} ${steps === 1 ? 'step' : 'steps'} only probable: the whole dam line holds with ${shareText(her.lineProbability)}.`;
}
