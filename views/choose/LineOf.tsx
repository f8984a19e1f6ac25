import type { QueenId } from '../../src/journal/ids.ts';
import { LineMark } from '../lines/LineMark.tsx';
import type { LineSummary } from '../lines/summaries.ts';

/** The mark of the line that a queen belongs to. */
export function LineOf({ line, lines }: { readonly line: QueenId; readonly lines: readonly LineSummary[] }) {
  const summary = lines.find((each) => each.line === line);
  return summary ? <LineMark letter={summary.letter} hue={summary.hue} /> : null;
}
