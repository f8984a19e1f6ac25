export * from './registry-graph.ts';
