/**
 * Where things stand in a JSON text, so that a problem can name its line. `JSON.parse` says what a text holds but
 * not where, and each browser words its errors differently. Syntax by RFC 8259.
 *
 * One pass, O(length); texts nested deeper than 64 levels are refused, which no file of ours comes near.
 */

export interface JsonPlaces {
  /** Offset of the first fault in the syntax; absent when the text is JSON. */
  readonly faultAt?: number;
  /** Offsets of the values at these paths, as `entries/12/day`. Only paths of up to `depth` steps are kept. */
  readonly places: ReadonlyMap<string, number>;
}

const DEEPEST = 64;
const QUOTE = 0x22;
const BACKSLASH = 0x5c;

/** Finds the places of all values up to `depth` steps from the top. */
export function jsonPlaces(text: string, depth: number): JsonPlaces {
  const reader: Reader = { text, at: 0, depth, places: new Map() };
  try {
    readValue(reader, '', 0);
    skipBlanks(reader);
    if (reader.at < text.length) throw new Fault(reader.at);
    return { places: reader.places };
  } catch (fault) {
    if (fault instanceof Fault) return { faultAt: fault.at, places: reader.places };
    throw fault;
  }
}

/** Answers which line an offset is on, counted from 1. O(length) once, then O(log lines) an answer. */
export function lineFinder(text: string): (offset: number) => number {
  const starts = [0];
  for (let at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) starts.push(at + 1);
  return (offset) => {
    let low = 0;
    let high = starts.length;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if ((starts[middle] ?? 0) <= offset) low = middle;
      else high = middle;
    }
    return low + 1;
  };
}

interface Reader {
  readonly text: string;
  at: number;
  readonly depth: number;
  readonly places: Map<string, number>;
}

class Fault extends Error {
  readonly at: number;

  constructor(at: number) {
    super(`not JSON at ${at}`);
    this.at = at;
  }
}

const BLANKS = /[ \t\n\r]*/y;
const ESCAPE = /["\\/bfnrt]|u[0-9a-fA-F]{4}/y;
const SCALAR = /true|false|null|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;

function match(reader: Reader, pattern: RegExp): string | undefined {
  pattern.lastIndex = reader.at;
  const found = pattern.exec(reader.text)?.[0];
  if (found !== undefined) reader.at += found.length;
  return found;
}

function skipBlanks(reader: Reader): void {
  match(reader, BLANKS);
}

function expectSign(reader: Reader, sign: string): void {
  skipBlanks(reader);
  if (reader.text[reader.at] !== sign) throw new Fault(reader.at);
  reader.at += 1;
}

function takeSign(reader: Reader, sign: string): boolean {
  skipBlanks(reader);
  if (reader.text[reader.at] !== sign) return false;
  reader.at += 1;
  return true;
}

function readValue(reader: Reader, path: string, level: number): void {
  skipBlanks(reader);
  if (level > DEEPEST) throw new Fault(reader.at);
  if (level <= reader.depth) reader.places.set(path, reader.at);
  const sign = reader.text[reader.at];
  if (sign === '{') readObject(reader, path, level);
  else if (sign === '[') readList(reader, path, level);
  else if (sign === '"') readString(reader);
  else if (match(reader, SCALAR) === undefined) throw new Fault(reader.at);
}

/** Reads a string, quotes and all. A loop and no pattern: a photograph is a string of some million signs. */
function readString(reader: Reader): string {
  const from = reader.at;
  expectSign(reader, '"');
  for (;;) {
    const code = reader.text.charCodeAt(reader.at);
    if (Number.isNaN(code) || code < 0x20) throw new Fault(reader.at);
    reader.at += 1;
    if (code === QUOTE) return reader.text.slice(from, reader.at);
    if (code === BACKSLASH && match(reader, ESCAPE) === undefined) throw new Fault(reader.at);
  }
}

function readObject(reader: Reader, path: string, level: number): void {
  reader.at += 1;
  if (takeSign(reader, '}')) return;
  do {
    skipBlanks(reader);
    const key = readString(reader);
    expectSign(reader, ':');
    readValue(reader, below(path, JSON.parse(key) as string), level + 1);
  } while (takeSign(reader, ','));
  expectSign(reader, '}');
}

function readList(reader: Reader, path: string, level: number): void {
  reader.at += 1;
  if (takeSign(reader, ']')) return;
  let index = 0;
  do {
    readValue(reader, below(path, String(index)), level + 1);
    index += 1;
  } while (takeSign(reader, ','));
  expectSign(reader, ']');
}

function below(path: string, step: string): string {
  return path === '' ? step : `${path}/${step}`;
}
