export type {
  GenesKept,
  GenesKeptWork,
  MatingWork,
  TaskKind,
  Tasks,
  TraitVariances,
} from '../workers/messages.ts';
export type { Keeper, Records, Store, UnionPreview, WrittenAction } from './contract.ts';
export type { StoredPhoto } from './db.ts';
export type { Evaluated, EvaluationState } from './evaluation.ts';
export { DEFAULT_OPTIONS, type DemoYard, type StoreOptions } from './options.ts';
export { DEFAULT_SETTINGS, Settings } from './settings.ts';
export { openStore } from './store.ts';
