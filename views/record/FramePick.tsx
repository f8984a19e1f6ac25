import { useState } from 'preact/hooks';
import { PickRow } from './PickRow.tsx';

const SHOWN = 5;
const MOST = 60;

export interface FramePickProps {
  readonly label: string;
  readonly value: number | undefined;
  readonly onChange: (value: number | undefined) => void;
  readonly last: { readonly value: number; readonly when: string } | undefined;
}

/** Frames by one tap: five numbers around those of the last visit, and more to either side. */
export function FramePick({ label, value, onChange, last }: FramePickProps) {
  const middle = Math.floor(value ?? last?.value ?? 4);
  const [from, setFrom] = useState(Math.max(0, middle - 2));
  const shift = (by: number) => setFrom(Math.min(MOST - SHOWN + 1, Math.max(0, from + by)));
  const values = Array.from({ length: SHOWN }, (_, at) => from + at);
  return (
    <PickRow label={label} values={values} value={value} onChange={onChange} last={last} onShift={shift} />
  );
}
