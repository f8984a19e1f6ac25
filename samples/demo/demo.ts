import type { PlainDay } from '../../src/journal/day.ts';
import type { Entry } from '../../src/journal/entry.ts';
import { orderOfEvents } from '../../src/journal/order.ts';
import { season2021 } from './seasons/2021.ts';
import { season2022 } from './seasons/2022.ts';
import { season2023 } from './seasons/2023.ts';
import { season2024 } from './seasons/2024.ts';
import { season2025 } from './seasons/2025.ts';
import { season2026 } from './seasons/2026.ts';
import { beginStory, type Story } from './story.ts';
import { tellingOf } from './telling/index.ts';

const DEMO_SEED = 20210418;
const FIRST_DAY = '2021-04-18' as PlainDay;

/** Tells the whole story. What it returns also knows what is hidden from the keepers: what each queen is worth. */
export function tellDemo(seed: number = DEMO_SEED): Story {
  const story = beginStory(FIRST_DAY, seed);
  const telling = tellingOf(story);
  for (const season of [season2021, season2022, season2023, season2024, season2025, season2026])
    season(telling);
  return story;
}

/** Every entry of the demo yard, in the order in which things happened. The same seed gives the same entries, ids included. */
export function demoEntries(seed: number = DEMO_SEED): readonly Entry[] {
  return orderOfEvents(tellDemo(seed).book.entries, new Map()).ordered;
}
