/**
 * Evaluates a batch of forms c' A c, and c' A e at the queens who ask for it, by blocks of columns.
 * Two ways, whichever needs fewer columns: one column for each form (A c), or one for each distinct node that
 * the forms hold (A e_node), whose values are then put together with the shares. The second serves a
 * registry in which every queen has a list of drone mothers of her own, out of far fewer drone mothers.
 * Cost: O(columns / 8 * (rows + parents)), and for the second way the squares of the list lengths.
 */
import { COLUMNS, clearBlock, type KnownRows, sweepBlock } from './column-kernel.ts';
import { type NumberLists, numberLists } from './column-tasks.ts';
import type { Layout } from './nodes.ts';
import type { ShareRows } from './share-rows.ts';

/** A sweep costs about this many times as much for an edge as putting together one pair of shares. */
const SWEEP_EDGE_COST = 6;

export interface BatchInput {
  readonly layout: Layout;
  readonly known: KnownRows;
  /** Row of each node; -1 where the node stands in nobody's ancestry. */
  readonly rowOf: Int32Array;
  readonly forms: ShareRows;
  /** Forms to evaluate. */
  readonly batch: readonly number[];
  /** Queen nodes at which form batch[k] is read: list k. */
  readonly readers: NumberLists;
}

export interface BatchResult {
  /** c' A c of each form of the batch. */
  readonly squares: Float64Array;
  /** c' A e for each reader, aligned with `readers.item`. */
  readonly readings: Float64Array;
}

export function evaluateBatch(input: BatchInput): BatchResult {
  const result = {
    squares: new Float64Array(input.batch.length),
    readings: new Float64Array(input.readers.item.length),
  };
  const nodes = distinctNodes(input);
  if (perNodeIsCheaper(input, nodes.length)) byNode(input, nodes, result);
  else byForm(input, result);
  return result;
}

function distinctNodes({ forms, batch }: BatchInput): Int32Array {
  const nodes = new Set<number>();
  for (const form of batch) {
    for (let k = forms.start[form]!; k < forms.start[form + 1]!; k++) nodes.add(forms.item[k]!);
  }
  return Int32Array.from(nodes).sort();
}

function perNodeIsCheaper({ forms, batch, known }: BatchInput, nodes: number): boolean {
  if (nodes >= batch.length) return false;
  let pairs = 0;
  for (const form of batch) pairs += (forms.start[form + 1]! - forms.start[form]!) ** 2;
  const edges = (known.count + known.start[known.count]!) / COLUMNS;
  return (batch.length - nodes) * edges * SWEEP_EDGE_COST > pairs;
}

/** Row up to which a forward sweep must go for these readers, or more. */
function endFor({ layout, known, rowOf, readers }: BatchInput, top: number): number {
  if (known.count < 4 * COLUMNS) return known.count;
  let end = top;
  for (const node of readers.item) {
    if (rowOf[node]! >= 0) end = Math.max(end, rowOf[node]! + 1);
    else {
      for (let k = layout.parentStart[node]!; k < layout.parentStart[node + 1]!; k++) {
        end = Math.max(end, rowOf[layout.parent[k]!]! + 1);
      }
    }
  }
  return end;
}

/** Value of column b at a node: its own row, or, where it has none, what its parents give it. */
function valueAt({ layout, known, rowOf }: BatchInput, node: number, b: number): number {
  const row = rowOf[node]!;
  if (row >= 0) return known.block[row * COLUMNS + b]!;
  let sum = 0;
  for (let k = layout.parentStart[node]!; k < layout.parentStart[node + 1]!; k++) {
    sum += layout.coefficient[k]! * known.block[rowOf[layout.parent[k]!]! * COLUMNS + b]!;
  }
  return sum;
}

function formProduct({ forms, known, rowOf }: BatchInput, form: number, b: number): number {
  let sum = 0;
  for (let k = forms.start[form]!; k < forms.start[form + 1]!; k++) {
    sum += forms.share[k]! * known.block[rowOf[forms.item[k]!]! * COLUMNS + b]!;
  }
  return sum;
}

function byForm(input: BatchInput, result: BatchResult): void {
  const { forms, batch, known, rowOf, readers } = input;
  const end = endFor(input, 0);
  for (let first = 0; first < batch.length; first += COLUMNS) {
    const width = Math.min(COLUMNS, batch.length - first);
    let top = 0;
    for (let b = 0; b < width; b++) {
      const form = batch[first + b]!;
      for (let k = forms.start[form]!; k < forms.start[form + 1]!; k++) {
        top = Math.max(top, rowOf[forms.item[k]!]! + 1);
      }
    }
    clearBlock(known, Math.max(top, end));
    for (let b = 0; b < width; b++) {
      const form = batch[first + b]!;
      for (let k = forms.start[form]!; k < forms.start[form + 1]!; k++) {
        known.block[rowOf[forms.item[k]!]! * COLUMNS + b]! += forms.share[k]!;
      }
    }
    sweepBlock(known, top, Math.max(top, end));
    for (let b = 0; b < width; b++) {
      result.squares[first + b] = formProduct(input, batch[first + b]!, b);
      for (let k = readers.start[first + b]!; k < readers.start[first + b + 1]!; k++) {
        result.readings[k] = valueAt(input, readers.item[k]!, b);
      }
    }
  }
}

/** For each distinct node, the places in the batch whose form holds it, and with which share. */
function usesOf({ forms, batch }: BatchInput, nodes: Int32Array) {
  const placeOfNode = new Map<number, number>();
  for (const [place, node] of nodes.entries()) placeOfNode.set(node, place);
  const inBatch: number[] = [];
  const pairs: number[] = [];
  batch.forEach((form, k) => {
    for (let pair = forms.start[form]!; pair < forms.start[form + 1]!; pair++) {
      inBatch.push(k);
      pairs.push(pair);
    }
  });
  const nodeOf = (use: number): number => placeOfNode.get(forms.item[pairs[use]!]!)!;
  return { inBatch, pairs, lists: numberLists(nodes.length, pairs.length, nodeOf, (use) => use) };
}

function byNode(input: BatchInput, nodes: Int32Array, result: BatchResult): void {
  const { forms, batch, known, rowOf, readers } = input;
  const uses = usesOf(input, nodes);
  const byRow = nodes.map((_, place) => place).sort((a, b) => rowOf[nodes[a]!]! - rowOf[nodes[b]!]!);
  const end = endFor(input, rowOf[nodes[byRow[byRow.length - 1]!]!]! + 1);
  for (let first = 0; first < byRow.length; first += COLUMNS) {
    const width = Math.min(COLUMNS, byRow.length - first);
    clearBlock(known, end);
    for (let b = 0; b < width; b++) known.block[rowOf[nodes[byRow[first + b]!]!]! * COLUMNS + b] = 1;
    sweepBlock(known, rowOf[nodes[byRow[first + width - 1]!]!]! + 1, end);
    for (let b = 0; b < width; b++) {
      const place = byRow[first + b]!;
      for (let use = uses.lists.start[place]!; use < uses.lists.start[place + 1]!; use++) {
        const k = uses.inBatch[uses.lists.item[use]!]!;
        const share = forms.share[uses.pairs[uses.lists.item[use]!]!]!;
        result.squares[k]! += share * formProduct(input, batch[k]!, b);
        for (let r = readers.start[k]!; r < readers.start[k + 1]!; r++) {
          result.readings[r]! += share * valueAt(input, readers.item[r]!, b);
        }
      }
    }
  }
}
