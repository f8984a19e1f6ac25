/** Lists by key. Keys stand in the order in which they first come, items in their own. Cost O(items). */

/** The items by the key of each. */
export function groupBy<Item, Key>(items: Iterable<Item>, keyOf: (item: Item) => Key): Map<Key, Item[]> {
  const groups = new Map<Key, Item[]>();
  for (const item of items) pushTo(groups, keyOf(item), item);
  return groups;
}

/** Puts one more item at the end of the list under a key. */
export function pushTo<Item, Key>(groups: Map<Key, Item[]>, key: Key, item: Item): void {
  const group = groups.get(key);
  if (group) group.push(item);
  else groups.set(key, [item]);
}
