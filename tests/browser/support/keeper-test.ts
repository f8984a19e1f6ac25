import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import type { Keeper, RunningApp } from './app.ts';

export type KeeperTest = (page: Page, keeper: Keeper) => Promise<void>;

/** A fresh keeper for one test; whatever the page throws fails it. */
export async function testWithKeeper(app: RunningApp, test: KeeperTest): Promise<void> {
  const keeper = await app.newKeeper();
  try {
    await test(keeper.page, keeper);
    expect(keeper.errors).toEqual([]);
  } finally {
    await keeper.close();
  }
}
