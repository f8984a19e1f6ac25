import type { Colony } from '../../src/registry/state.ts';

export interface ActSheetProps {
  readonly colony: Colony;
  readonly onClose: () => void;
}
