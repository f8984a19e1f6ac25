/**
 * Special functions behind every interval and tail probability: log gamma, incomplete beta, incomplete gamma,
 * normal, Student t and chi-square.
 *
 *   log gamma(x)  = (x - 1/2) log x - x + log(2 pi)/2 + 1/(12 x) - 1/(360 x^3) + ...   (x >= 12, else shifted up)
 *   I_x(a, b)     = 1/B(a, b) * integral from 0 to x of t^(a-1) (1-t)^(b-1) dt          (continued fraction)
 *   P(a, x)       = 1/gamma(a) * integral from 0 to x of t^(a-1) e^-t dt                (series, or fraction for Q)
 *   quantiles     = roots of the above by Newton steps kept inside a shrinking bracket
 *
 * Sources (from memory, not re-read): Abramowitz & Stegun 1964, Handbook of Mathematical Functions, 6.1.41 (Stirling
 * series), 26.2.23 (starting value of the normal quantile), 26.5.8 (fraction of I_x), 6.5.29 and 6.5.31 (P and Q);
 * Lentz 1976, Applied Optics 15:668 (evaluation of continued fractions).
 * Cost: O(sqrt(max(a, b))) terms at worst; quantiles some ten of those. Relative error about 1e-13, tested at 1e-11.
 * Unknowns: arguments outside the stated range are our own bugs and throw.
 */

const HALF_LOG_TWO_PI = 0.5 * Math.log(2 * Math.PI);
/** Bernoulli terms B(2k) / (2k (2k - 1)) of Stirling's series, Abramowitz & Stegun 6.1.41 (from memory). */
const STIRLING = [1 / 12, -1 / 360, 1 / 1260, -1 / 1680, 1 / 1188, -691 / 360360, 1 / 156];
/** From here on the seven terms above leave less than 1e-16. */
const STIRLING_FROM = 12;
const TINY = 1e-300;
const CLOSE = 1e-16;
const MOST_TERMS = 100_000;

/** Log gamma less its leading Stirling terms; for x >= 12. */
function stirlingRest(x: number): number {
  const inverseSquare = 1 / (x * x);
  let sum = 0;
  for (let k = STIRLING.length - 1; k >= 0; k--) sum = sum * inverseSquare + STIRLING[k]!;
  return sum / x;
}

/** log gamma(x) for x > 0. */
export function logGamma(x: number): number {
  if (!(x > 0)) throw new RangeError(`logGamma needs x > 0, got ${x}`);
  let shifted = x;
  let product = 1;
  while (shifted < STIRLING_FROM) product *= shifted++;
  return (
    (shifted - 0.5) * Math.log(shifted) -
    shifted +
    HALF_LOG_TWO_PI +
    stirlingRest(shifted) -
    Math.log(product)
  );
}

/** log B(a, b) = log gamma(a) + log gamma(b) - log gamma(a + b), arranged so that large terms cancel on paper. */
export function logBeta(a: number, b: number): number {
  const small = Math.min(a, b);
  const large = Math.max(a, b);
  const sum = small + large;
  if (large < STIRLING_FROM) return logGamma(small) + logGamma(large) - logGamma(sum);
  const rest = stirlingRest(large) - stirlingRest(sum);
  if (small < STIRLING_FROM) {
    const change = small - small * Math.log(sum) + (large - 0.5) * Math.log1p(-small / sum);
    return logGamma(small) + change + rest;
  }
  const leading =
    (small - 0.5) * Math.log(small / sum) + large * Math.log1p(-small / sum) - 0.5 * Math.log(large);
  return leading + HALF_LOG_TWO_PI + stirlingRest(small) + rest;
}

/** Lentz's evaluation of b0 + a1/(b1 + a2/(b2 + ...)); `term(k)` gives [a_k, b_k]. */
function continuedFraction(first: number, term: (k: number) => readonly [number, number]): number {
  let value = first || TINY;
  let upper = value;
  let lower = 0;
  for (let k = 1; k < MOST_TERMS; k++) {
    const [numerator, denominator] = term(k);
    lower = 1 / (denominator + numerator * lower || TINY);
    upper = denominator + numerator / upper || TINY;
    const factor = upper * lower;
    value *= factor;
    if (Math.abs(factor - 1) < CLOSE * 4) return value;
  }
  throw new Error('A continued fraction did not settle; its argument is out of the range it is made for.');
}

/** Regularised incomplete beta I_x(a, b), 0..1, for 0 <= x <= 1 and a, b > 0. */
export function incompleteBeta(x: number, a: number, b: number): number {
  if (!(a > 0 && b > 0 && x >= 0 && x <= 1))
    throw new RangeError(`incompleteBeta(${x}, ${a}, ${b}) is undefined`);
  if (x === 0 || x === 1) return x;
  if (x > (a + 1) / (a + b + 2)) return 1 - incompleteBeta(1 - x, b, a);
  const fraction = continuedFraction(1, (k) => {
    const m = k >> 1;
    const numerator =
      k % 2 === 0
        ? (m * (b - m) * x) / ((a + k - 1) * (a + k))
        : (-(a + m) * (a + b + m) * x) / ((a + k - 1) * (a + k));
    return [numerator, 1];
  });
  return Math.exp(a * Math.log(x) + b * Math.log1p(-x) - logBeta(a, b)) / (a * fraction);
}

/** Regularised lower incomplete gamma P(a, x) for a > 0, x >= 0. */
export function lowerGamma(a: number, x: number): number {
  return x < a + 1 ? gammaSeries(a, x) : 1 - gammaFraction(a, x);
}

/** Regularised upper incomplete gamma Q(a, x) = 1 - P(a, x), exact in the far tail. */
export function upperGamma(a: number, x: number): number {
  return x < a + 1 ? 1 - gammaSeries(a, x) : gammaFraction(a, x);
}

function gammaWeight(a: number, x: number): number {
  return Math.exp(a * Math.log(x) - x - logGamma(a));
}

function gammaSeries(a: number, x: number): number {
  if (x <= 0) return 0;
  let term = 1 / a;
  let sum = term;
  for (let k = 1; k < MOST_TERMS && term > sum * CLOSE; k++) {
    term *= x / (a + k);
    sum += term;
  }
  return sum * gammaWeight(a, x);
}

function gammaFraction(a: number, x: number): number {
  const fraction = continuedFraction(x + 1 - a, (k) => [-k * (k - a), x + 2 * k + 1 - a]);
  return gammaWeight(a, x) / fraction;
}

/** Root of an increasing function: Newton steps, halving whenever one would leave the bracket. */
function increasingRoot(
  excess: (x: number) => number,
  slope: (x: number) => number,
  bracket: readonly [number, number],
  start: number,
): number {
  let [low, high] = bracket;
  let x = start;
  for (let step = 0; step < 2000; step++) {
    const miss = excess(x);
    if (miss === 0) return x;
    if (miss < 0) low = x;
    else high = x;
    const newton = x - miss / slope(x);
    const next = newton > low && newton < high ? newton : (low + high) / 2;
    if (Math.abs(next - x) <= 2e-16 * Math.abs(next)) return next;
    x = next;
  }
  return x;
}

/** The x with I_x(a, b) = p; 0 <= p <= 1. */
export function betaQuantile(p: number, a: number, b: number): number {
  if (p <= 0 || p >= 1) return p <= 0 ? 0 : 1;
  const log = logBeta(a, b);
  const density = (x: number) => Math.exp((a - 1) * Math.log(x) + (b - 1) * Math.log1p(-x) - log);
  return increasingRoot((x) => incompleteBeta(x, a, b) - p, density, [0, 1], a / (a + b));
}

/** The x with P(a, x) = p; 0 <= p < 1. */
export function gammaQuantile(p: number, a: number): number {
  if (p <= 0) return 0;
  let high = a + 10;
  while (lowerGamma(a, high) < p) high *= 2;
  const density = (x: number) => gammaWeight(a, x) / x;
  return increasingRoot((x) => lowerGamma(a, x) - p, density, [0, high], Math.min(a, high / 2));
}

/** Chance that a chi-square with so many degrees of freedom exceeds x. */
export function chiSquareTail(x: number, degrees: number): number {
  return x <= 0 ? 1 : upperGamma(degrees / 2, x / 2);
}

/** Chance that a standard normal lies below x. */
export function normalBelow(x: number): number {
  const tail = 0.5 * upperGamma(0.5, (x * x) / 2);
  return x < 0 ? tail : 1 - tail;
}

/** The standard normal quantile of p, 0 < p < 1. */
export function normalQuantile(p: number): number {
  if (!(p > 0 && p < 1)) throw new RangeError(`normalQuantile needs 0 < p < 1, got ${p}`);
  if (p > 0.5) return -normalQuantile(1 - p);
  const t = Math.sqrt(-2 * Math.log(p));
  const ratio =
    (2.515517 + t * (0.802853 + t * 0.010328)) / (1 + t * (1.432788 + t * (0.189269 + t * 0.001308)));
  let x = ratio - t;
  for (let step = 0; step < 4; step++) {
    const error = (normalBelow(x) - p) / (Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI));
    x -= error / (1 + (x * error) / 2);
  }
  return x;
}

/** Two-sided tail of Student's t: chance of a value further from 0 than t. */
export function studentTail(t: number, degrees: number): number {
  return incompleteBeta(degrees / (degrees + t * t), degrees / 2, 0.5);
}

/** The t that a Student variable exceeds in size with chance `outside` (two-sided), 0 < outside < 1. */
export function studentLimit(outside: number, degrees: number): number {
  const x = betaQuantile(outside, degrees / 2, 0.5);
  return Math.sqrt((degrees * (1 - x)) / x);
}
