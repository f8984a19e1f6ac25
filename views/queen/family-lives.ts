import type { QueenId } from '../../src/journal/ids.ts';
import type { Life } from '../lines/lives.ts';
import { wintersText } from '../lines/words.ts';

/** Whom the picture of a queen's family shows: her dams up to the founder, sisters made with her, her daughters. */
export interface FamilyLives {
  readonly lives: readonly Life[];
  /** Her dam line from the founder down to her. */
  readonly damLine: readonly Life[];
}

export function familyLives(byId: ReadonlyMap<QueenId, Life>, queen: QueenId): FamilyLives {
  const her = byId.get(queen);
  if (!her) return { lives: [], damLine: [] };
  const damLine: Life[] = [];
  for (let at: Life | undefined = her; at; at = at.dam ? byId.get(at.dam) : undefined) damLine.unshift(at);
  const shown = new Map<QueenId, Life>(damLine.map((life) => [life.id, life]));
  for (const life of byId.values()) {
    const sister = her.dam !== undefined && life.dam === her.dam && life.start === her.start;
    if (life.dam === her.id || sister) shown.set(life.id, life);
  }
  return { lives: [...shown.values()], damLine };
}

/** The dam line in a sentence, from her up to the founder, with each dam's winters. */
export function damLineWords(damLine: readonly Life[]): string {
  const [her, ...dams] = damLine.toReversed();
  if (!her) return '';
  if (dams.length === 0) return `${her.title} founds her line.`;
  const steps = dams.map(
    (dam) => `${dam.title} (${dam.winters.length > 0 ? wintersText(dam.winters) : 'no winter crossed'})`,
  );
  return `From ${her.title} to the founder: ${steps.join(', then ')}.`;
}

/** A warning where a step of the dam line is not firm; undefined where all are. */
export function damLineDoubt({ damLine }: FamilyLives): string | undefined {
  const weak = damLine.filter(({ certainty, dam }) => dam !== undefined && certainty !== 'firm');
  const her = damLine.at(-1);
  if (weak.length === 0 || !her) return undefined;
  const steps = weak.length === 1 ? 'one step is' : `${weak.length} steps are`;
  return `In this dam line ${steps} only probable; all of it holds with a probability of ${Math.round(100 * her.lineProbability)}\u00a0%.`;
}
