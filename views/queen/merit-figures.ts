import type { TraitId } from '../../graph/merit/traits/trait.ts';

/** What the evaluation says of one queen, as the section shows it. */
export interface MeritFigures {
  /** "2nd of 14 living queens". */
  readonly placeWords: string;
  /** "fairly sure", "little more than a guess". */
  readonly sureWords: string;
  /** The index with its standard error and reliability. */
  readonly figureWords: string;
  readonly parts: readonly { readonly trait: TraitId; readonly words: string }[];
}
