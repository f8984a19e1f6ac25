/**
 * A map that grows without being copied: a few new entries laid over a large map that stays as it is. Reading costs one
 * look more; once the layer has grown to `FLATTEN_AT`, both are copied into one. Earlier maps never change.
 */
const FLATTEN_AT = 512;

/**
 * The map with entries added or replaced; the first stays as it was. Cost: of the added ones, now and then of all.
 */
export function withEntries<K, V>(
  map: ReadonlyMap<K, V>,
  added: Iterable<readonly [K, V]>,
): ReadonlyMap<K, V> {
  const base = map instanceof LayeredMap ? map.base : map;
  const layer = new Map<K, V>(map instanceof LayeredMap ? map.layer : []);
  for (const [key, value] of added) layer.set(key, value);
  if (layer.size === 0) return map;
  if (layer.size < FLATTEN_AT && base.size > FLATTEN_AT) return new LayeredMap(base, layer);
  const flat = new Map(base);
  for (const [key, value] of layer) flat.set(key, value);
  return flat;
}

class LayeredMap<K, V> implements ReadonlyMap<K, V> {
  readonly base: ReadonlyMap<K, V>;
  readonly layer: ReadonlyMap<K, V>;
  readonly size: number;

  constructor(base: ReadonlyMap<K, V>, layer: ReadonlyMap<K, V>) {
    this.base = base;
    this.layer = layer;
    let size = base.size;
    for (const key of layer.keys()) if (!base.has(key)) size += 1;
    this.size = size;
  }

  get(key: K): V | undefined {
    return this.layer.has(key) ? this.layer.get(key) : this.base.get(key);
  }

  has(key: K): boolean {
    return this.layer.has(key) || this.base.has(key);
  }

  *entries(): MapIterator<[K, V]> {
    for (const [key, value] of this.base)
      yield [key, this.layer.has(key) ? (this.layer.get(key) as V) : value];
    for (const entry of this.layer) if (!this.base.has(entry[0])) yield entry;
  }

  *keys(): MapIterator<K> {
    for (const [key] of this.entries()) yield key;
  }

  *values(): MapIterator<V> {
    for (const [, value] of this.entries()) yield value;
  }

  forEach(visit: (value: V, key: K, map: ReadonlyMap<K, V>) => void): void {
    for (const [key, value] of this.entries()) visit(value, key, this);
  }

  [Symbol.iterator](): MapIterator<[K, V]> {
    return this.entries();
  }
}
