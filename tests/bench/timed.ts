/** Seconds by the clock, and those of the processor: what the clock shows when nothing else runs, or a little more. */
export interface Seconds {
  readonly seconds: number;
  readonly processor: number;
}

/** Does the work once and times it. */
export function timed<Value>(work: () => Value): Seconds & { readonly value: Value } {
  const before = process.cpuUsage();
  const begin = performance.now();
  const value = work();
  const seconds = (performance.now() - begin) / 1000;
  const { user, system } = process.cpuUsage(before);
  return { value, seconds, processor: (user + system) / 1e6 };
}
