import type { Queen } from '../../src/registry/state.ts';

export interface QueenSheetProps {
  readonly queen: Queen;
  readonly onClose: () => void;
}
