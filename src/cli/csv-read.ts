/**
 * Reads comma-separated text (RFC 4180): quoted fields, doubled quotes, line breaks inside quotes, a byte order
 * mark, CRLF or LF; blank lines are passed over. One pass over the characters, since tables of a club's size
 * come with every command; each record keeps the line it starts on, so that problems can be found.
 */

export interface CsvRecord {
  readonly fields: readonly string[];
  /** Line of the file on which the record starts, from 1. */
  readonly line: number;
}

export interface CsvText {
  readonly records: readonly CsvRecord[];
  /** Line of a quote that is never closed. */
  readonly openQuoteLine?: number;
}

const QUOTE = 34;
const COMMA = 44;
const NEWLINE = 10;
const RETURN = 13;

export function readCsv(text: string): CsvText {
  const records: CsvRecord[] = [];
  let at = text.charCodeAt(0) === 0xfeff ? 1 : 0;
  let line = 1;
  while (at < text.length) {
    const first = line;
    const fields: string[] = [];
    for (;;) {
      if (text.charCodeAt(at) === QUOTE) {
        const quoted = readQuoted(text, at);
        if (!quoted) return { records, openQuoteLine: line };
        fields.push(quoted.value);
        line += quoted.lines;
        at = quoted.end;
      } else {
        const end = endOfField(text, at);
        fields.push(text.slice(at, end).trim());
        at = end;
      }
      if (text.charCodeAt(at) !== COMMA) break;
      at++;
    }
    if (text.charCodeAt(at) === RETURN) at++;
    if (text.charCodeAt(at) === NEWLINE) at++;
    line++;
    if (fields.length > 1 || fields[0] !== '') records.push({ fields, line: first });
  }
  return { records };
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
    value += text.slice(close + 1, end).trim();
    return { value: value.trim(), end, lines: value.split('\n').length - 1 };
  }
}
