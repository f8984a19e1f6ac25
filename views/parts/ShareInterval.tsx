import { IntervalBar } from './IntervalBar.tsx';

export interface ShareIntervalProps {
  readonly label: string;
  /** Shares, 0..1. */
  readonly share: { readonly mean: number; readonly low: number; readonly high: number };
  /** Share at which the scale begins. */
  readonly from?: number;
  /** A share to compare with. */
  readonly beside?: { readonly share: number; readonly label: string };
}

/** A share with its interval, in whole percents on a scale that ends at all. */
export function ShareInterval({ label, share: { mean, low, high }, from = 0, beside }: ShareIntervalProps) {
  return (
    <IntervalBar
      label={label}
      value={100 * mean}
      low={100 * low}
      high={100 * high}
      min={100 * from}
      max={100}
      digits={0}
      unit="%"
      threshold={beside && { value: Math.round(100 * beside.share), label: beside.label }}
    />
  );
}
