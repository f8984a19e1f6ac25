import { useState } from 'preact/hooks';

export interface TypedNumber {
  readonly text: string;
  readonly onInput: (text: string) => void;
  readonly onBlur: () => void;
}

/**
 * A number being typed: what stands in the field is left as it is while it is typed, so that "1." may become "1.5".
 * A comma counts as a point. Text that is no number is no value.
 */
export function useTypedNumber(
  value: number | undefined,
  onChange: (value: number | undefined) => void,
): TypedNumber {
  const [typed, setTyped] = useState<string>();
  const onInput = (text: string) => {
    setTyped(text);
    onChange(readNumber(text));
  };
  return {
    text: typed ?? (value === undefined ? '' : String(value)),
    onInput,
    onBlur: () => setTyped(undefined),
  };
}

/** The number typed, with a comma or a point; undefined where it is none. */
export function readNumber(text: string): number | undefined {
  const plain = text.trim().replace(',', '.');
  const number = Number(plain);
  return plain === '' || Number.isNaN(number) ? undefined : number;
}
