/** Many lists of whole numbers in two typed arrays: list r holds item[start[r]] .. item[start[r + 1] - 1]. */
export interface NumberLists {
  readonly start: Int32Array;
  readonly item: Int32Array;
}

/** Sorts numbers into lists, each list in the order given; a pair whose list is negative is left out. O(pairs). */
export function numberLists(
  lists: number,
  listOf: ArrayLike<number>,
  numberOf?: ArrayLike<number>,
): NumberLists {
  const start = new Int32Array(lists + 1);
  for (let pair = 0; pair < listOf.length; pair++) {
    const list = listOf[pair]!;
    if (list >= 0) start[list + 1]!++;
  }
  for (let list = 0; list < lists; list++) start[list + 1]! += start[list]!;
  const next = start.slice();
  const item = new Int32Array(start[lists]!);
  for (let pair = 0; pair < listOf.length; pair++) {
    const list = listOf[pair]!;
    if (list >= 0) item[next[list]!++] = numberOf ? numberOf[pair]! : pair;
  }
  return { start, item };
}

/** Length of each list. */
export function listLengths({ start }: Pick<NumberLists, 'start'>): Int32Array {
  const lengths = new Int32Array(start.length - 1);
  for (let list = 0; list < lengths.length; list++) lengths[list] = start[list + 1]! - start[list]!;
  return lengths;
}

/** The list of each item, for lists that stand one after the other. */
export function listOfItems({ start }: Pick<NumberLists, 'start'>): Int32Array {
  const lists = new Int32Array(start[start.length - 1]!);
  for (let list = 0; list + 1 < start.length; list++) lists.fill(list, start[list]!, start[list + 1]!);
  return lists;
}
