import { describe, expect, it } from 'vitest';
import { computeInline } from '../../helpers/compute-inline.ts';
import { DEMO_DAY, demoEntries } from '../../helpers/demo.ts';
import { device, unwrap } from '../../helpers/devices.ts';

async function demoStore() {
  const store = await device(1, new Date(2026, 5, 12, 12)).open({ compute: computeInline });
  unwrap(await store.unite(demoEntries()));
  store.on.value = DEMO_DAY;
  return store;
}

function ready(store: Awaited<ReturnType<typeof demoStore>>) {
  return new Promise<NonNullable<unknown>>((resolve, reject) => {
    const stop = store.evaluation.subscribe((state) => {
      if (state.is === 'failed') reject(new Error(state.problem.found));
      if (state.is !== 'ready') return;
      resolve(state.evaluated);
      queueMicrotask(() => stop());
    });
  });
}

describe('the evaluation', () => {
  it('is not worked out until a screen watches, and then of every living laying queen', async () => {
    const store = await demoStore();
    expect(store.evaluation.value.is).toBe('not-asked');
    const stop = store.watchEvaluation();
    await ready(store);
    const state = store.evaluation.value;
    if (state.is !== 'ready') throw new Error(`The evaluation is ${state.is}.`);
    const { answer } = state.evaluated;
    expect(answer.candidates.length).toBeGreaterThan(8);
    expect(answer.kinship).toHaveLength(answer.candidates.length ** 2);
    expect(answer.yards.every(({ daughters }) => daughters.length === answer.candidates.length)).toBe(true);
    const survival = answer.evaluation.traits.find(({ trait }) => trait === 'winter-survival');
    expect(survival?.reliability?.some((reliability) => reliability > 0)).toBe(true);
    stop();
  });

  it('is worked out anew when the records change under it', async () => {
    const store = await demoStore();
    const stop = store.watchEvaluation();
    await ready(store);
    const before = store.evaluation.value;
    const colony = [...store.registry.value.colonies.values()].find(({ ended }) => !ended);
    if (!colony) throw new Error('The demo yard has a living colony.');
    unwrap(
      await store.write([{ kind: 'inspection', day: DEMO_DAY, colony: colony.id, gentle: 4 }], 'A look'),
    );
    await ready(store);
    const after = store.evaluation.value;
    if (before.is !== 'ready' || after.is !== 'ready') throw new Error('Both are ready.');
    expect(after.evaluated.registry.revision).toBeGreaterThan(before.evaluated.registry.revision);
    stop();
  });
});
