/** Writes comma-separated text (RFC 4180), in pieces of a size that suits a pipe or a file. */
import type { Output } from './command.ts';

const PIECE = 1 << 16;
const DIGITS = 12;
const NEEDS_QUOTES = /[",\r\n]|^\s|\s$/;

/** A field, quoted where it must be. */
export function csvField(text: string): string {
  return NEEDS_QUOTES.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

const ZERO = 48;
const POINT = 46;

/** A number to 12 significant digits, without idle zeros; empty where it is unknown. */
export function csvNumber(value: number | undefined): string {
  if (value === undefined) return '';
  if (Number.isInteger(value) && Math.abs(value) < 1e12) return String(value);
  const text = value.toPrecision(DIGITS);
  if (text.includes('e')) return String(Number(text));
  let end = text.length;
  while (text.charCodeAt(end - 1) === ZERO) end--;
  return text.slice(0, text.charCodeAt(end - 1) === POINT ? end - 1 : end);
}

export interface CsvWriter {
  /** One line, fields already written by `csvField` or `csvNumber`; may wait for a full pipe. */
  readonly line: (text: string) => Promise<void> | undefined;
  readonly close: () => Promise<void>;
}

/** Writes lines in large pieces: a call for each line would take most of the time of a large table. */
export function csvWriter(output: Output, columns: readonly string[]): CsvWriter {
  let piece = `${columns.join(',')}\n`;
  return {
    line(text) {
      piece += text;
      piece += '\n';
      if (piece.length < PIECE) return undefined;
      const full = piece;
      piece = '';
      return output.write(full);
    },
    async close() {
      if (piece) await output.write(piece);
      await output.close();
    },
  };
}
