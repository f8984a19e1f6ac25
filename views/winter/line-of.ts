import type { Queen } from '../../src/registry/state.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { lineFacts } from '../lines/facts.ts';
import type { LineSummary } from '../lines/summaries.ts';

/** The line of a queen, with the letter, colour and founder that every screen gives it. */
export function useLineOf(): (queen: Queen | undefined) => LineSummary | undefined {
  const registry = useRegistry();
  const { byId, lines } = lineFacts(registry, useStore().on.value);
  const byLine = new Map(lines.map((line) => [line.line, line]));
  return (queen) => {
    const line = queen && byId.get(queen.id)?.line;
    return line && byLine.get(line);
  };
}
