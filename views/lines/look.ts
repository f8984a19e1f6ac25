import type { QueenId } from '../../src/journal/ids.ts';
import { count } from '../parts/words.ts';
import type { DroneSources } from './drone-sources.ts';
import type { Joint } from './geometry.ts';
import type { Life } from './lives.ts';
import type { LineSummary } from './summaries.ts';
import { fitText, textWidth } from './text-width.ts';
import { jointSentence, lifeSentence } from './words.ts';

/** What the drawing shows besides places: colours, words, who is chosen, who stands back. */
export interface Look {
  readonly hue: (queen: QueenId) => number;
  readonly chosen: readonly QueenId[];
  /** The queens that stay in full ink while the others fade; absent: all. */
  readonly family?: ReadonlySet<QueenId> | undefined;
  readonly drones?: DroneSources | undefined;
  readonly queenWords: (life: Life) => string;
  readonly jointWords: (joint: Joint) => string;
  readonly lineTitle: (line: QueenId) => {
    readonly letter: string;
    readonly name: string;
    readonly note: string;
  };
  /** What stands beside the drawing at the end of a life that has not ended. */
  readonly hereLabel: (
    life: Life,
    room: number,
  ) => { readonly name: string; readonly box?: string } | undefined;
}

export interface LookInput {
  readonly lives: ReadonlyMap<QueenId, Life>;
  readonly summaries: readonly LineSummary[];
  readonly chosen: readonly QueenId[];
  readonly family?: ReadonlySet<QueenId> | undefined;
  readonly drones?: DroneSources | undefined;
}

/** How each queen is to be drawn: her hue, whether she is faded, what her tooltip says. */
export function lookOf({ lives, summaries, chosen, family, drones }: LookInput): Look {
  const byLine = new Map(summaries.map((line) => [line.line, line]));
  return {
    chosen,
    family,
    drones,
    hue: (queen) => byLine.get(lives.get(queen)?.line ?? queen)?.hue ?? 1,
    queenWords: (life) => lifeSentence(life, (id) => lives.get(id)?.title ?? 'a queen not in these records'),
    jointWords: (joint) =>
      jointSentence(joint, (id) => lives.get(id)?.title ?? 'a queen not in these records'),
    lineTitle: (line) => {
      const summary = byLine.get(line);
      return {
        letter: summary?.letter ?? '',
        name: summary?.title ?? '',
        note: summary ? lineNote(summary) : '',
      };
    },
    hereLabel,
  };
}

function lineNote({ living, expected, unknown }: LineSummary): string {
  if (living > 0) return `${count(living, 'queen')} living`;
  if (expected > 0) return `none laying, ${expected} awaited`;
  return unknown > 0 ? 'none in these yards' : 'ended';
}

const NAME_SIZE = 16;
const BOX_SIZE = 14;
const BOX_GAP = 7;

function hereLabel(life: Life, room: number): { readonly name: string; readonly box?: string } | undefined {
  if (life.fate !== 'living' && life.fate !== 'expected') return undefined;
  const name = life.named ? life.title : life.fate === 'expected' ? 'awaited' : 'unnamed';
  const taken = textWidth(name, NAME_SIZE) + BOX_GAP;
  const box = life.colony?.label;
  if (!box) return { name: fitText(name, NAME_SIZE, room) };
  if (taken + textWidth(box, BOX_SIZE) <= room) return { name, box };
  if (life.named) return { name: fitText(name, NAME_SIZE, room) };
  return { name, box: fitText(box, BOX_SIZE, Math.max(0, room - taken)) };
}
