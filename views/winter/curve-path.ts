import type { SurvivalCurve } from '../../graph/merit/survival/kaplan-meier.ts';

/** A survival curve as steps on paper: `x` places winters, `y` shares. */
export interface CurveScale {
  readonly x: (winters: number) => number;
  readonly y: (share: number) => number;
}

interface Level {
  readonly from: number;
  readonly to: number;
  readonly survival: number;
  readonly low?: number;
  readonly high?: number;
}

/** The level stretches of a curve, from the start to the last time anyone was watched. */
export function levels(curve: SurvivalCurve): readonly Level[] {
  const found: Level[] = [];
  let level: Omit<Level, 'from' | 'to'> = { survival: 1, low: 1, high: 1 };
  let from = 0;
  for (const step of curve.steps) {
    found.push({ from, to: step.time, ...level });
    from = step.time;
    const { survival, low, high } = step;
    level = { survival, ...(low === undefined || high === undefined ? {} : { low, high }) };
  }
  return found;
}

/** The steps as a path; a fall at the end of the last stretch is drawn to its foot. */
export function stepPath(curve: SurvivalCurve, { x, y }: CurveScale): string {
  const last = curve.steps.at(-1);
  if (!last) return '';
  const stretches = levels(curve).map(({ to, survival }) => `V${round(y(survival))}H${round(x(to))}`);
  return `M${round(x(0))} ${round(y(1))}${stretches.join('')}V${round(y(last.survival))}`;
}

/** The limits as a path along the upper ends and back along the lower; stretches without limits are left out. */
export function bandPath(curve: SurvivalCurve, { x, y }: CurveScale): string {
  return levels(curve)
    .flatMap(({ from, to, low, high }) =>
      low === undefined || high === undefined || low === high
        ? []
        : [`M${round(x(from))} ${round(y(high))}H${round(x(to))}V${round(y(low))}H${round(x(from))}Z`],
    )
    .join('');
}

/** Those at risk in each winter from the first to the last watched: "22, 13, 7, 2". */
export function atRisk(curve: SurvivalCurve): readonly number[] {
  const last = curve.steps.at(-1)?.time ?? 0;
  return Array.from({ length: last }, (_, at) => curve.steps.find(({ time }) => time >= at + 1)?.atRisk ?? 0);
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
