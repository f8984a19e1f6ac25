/**
 * Reads comma-separated text (RFC 4180): quoted fields, doubled quotes, line breaks inside quotes, a byte order
 * mark, CRLF or LF; blank lines are passed over. One pass over the characters and one flat list of fields, since
 * tables of a club's size come with every command.
 */

export interface CsvText {
  /** All fields, record after record, without blanks around them. */
  readonly fields: readonly string[];
  /** Fields of record r stand at starts[r] .. starts[r + 1] - 1. */
  readonly starts: readonly number[];
  /** Line of the file on which each record starts, from 1. */
  readonly lines: readonly number[];
  /** A quote that is never closed: its line, and the number of its field; reading ends there. */
  readonly openQuote?: { readonly line: number; readonly column: number };
}

const QUOTE = 34;
const COMMA = 44;
const NEWLINE = 10;
const RETURN = 13;
const BLANK = 32;

/** Fields of a CSV text (RFC 4180; a byte order mark is passed over) in one flat list, with the line of each row. */
export function readCsv(text: string): CsvText {
  const fields: string[] = [];
  const starts: number[] = [0];
  const lines: number[] = [];
  let at = text.charCodeAt(0) === 0xfeff ? 1 : 0;
  let line = 1;
  while (at < text.length) {
    const first = line;
    const start = fields.length;
    for (;;) {
      if (text.charCodeAt(at) === QUOTE) {
        const quoted = readQuoted(text, at);
        if (!quoted) {
          return { fields, starts, lines, openQuote: { line, column: fields.length - start + 1 } };
        }
        fields.push(quoted.value);
        line += quoted.lines;
        at = quoted.end;
      } else {
        const end = endOfField(text, at);
        fields.push(trimmed(text, at, end));
        at = end;
      }
      if (text.charCodeAt(at) !== COMMA) break;
      at++;
    }
    if (text.charCodeAt(at) === RETURN) at++;
    if (text.charCodeAt(at) === NEWLINE) at++;
    line++;
    if (fields.length === start + 1 && fields[start] === '') fields.pop();
    else {
      starts.push(fields.length);
      lines.push(first);
    }
  }
  return { fields, starts, lines };
}

/** Place of the comma or line end after an unquoted field. */
function endOfField(text: string, start: number): number {
  let at = start;
  for (; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code === COMMA || code === NEWLINE || code === RETURN) break;
  }
  return at;
}

function trimmed(text: string, start: number, end: number): string {
  if (start === end) return '';
  const isTight = text.charCodeAt(start) > BLANK && text.charCodeAt(end - 1) > BLANK;
  return isTight ? text.slice(start, end) : text.slice(start, end).trim();
}

/** A quoted field from its opening quote; what follows the closing quote up to the comma is kept too. */
function readQuoted(text: string, open: number): { value: string; end: number; lines: number } | undefined {
  let value = '';
  let from = open + 1;
  for (;;) {
    const close = text.indexOf('"', from);
    if (close < 0) return undefined;
    value += text.slice(from, close);
    if (text.charCodeAt(close + 1) === QUOTE) {
      value += '"';
      from = close + 2;
      continue;
    }
    const end = endOfField(text, close + 1);
    value += text.slice(close + 1, end);
    return { value: value.trim(), end, lines: value.split('\n').length - 1 };
  }
}
