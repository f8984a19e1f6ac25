import type { RoughDay } from '../../journal/day.ts';
import type { Problem } from '../../journal/problems.ts';
import type { ColumnMapping } from './columns.ts';
import type { ReadMark } from './values/mark.ts';
import type { MiteSample } from './values/mites.ts';
import type { NamedQueen, ReadDam } from './values/name.ts';
import type { Outcome } from './values/outcome.ts';

/** Numbers that an inspection may hold. */
export type InspectionField =
  | 'gentle'
  | 'calm'
  | 'swarmTendency'
  | 'framesOfBees'
  | 'framesOfBrood'
  | 'framesOfStores'
  | 'broodPattern';

/** A problem of a row; one that blocks keeps the row out, others leave a cell as a note. */
export interface RowProblem extends Problem {
  readonly blocks: boolean;
  /** The column of the cell, counted from 0; absent when the row as a whole is meant. */
  readonly column?: number;
}

/** A row read cell by cell, before it is known which queen and which box are meant. */
export interface ReadRow {
  readonly line: number;
  queen?: NamedQueen;
  dam?: ReadDam;
  colony?: string;
  yard?: string;
  born?: RoughDay;
  /** The year that the row tells of. */
  season?: number;
  date?: RoughDay;
  ended?: RoughDay;
  mark?: ReadMark;
  origin?: string;
  background?: string;
  outcome?: Outcome;
  readonly winters: { readonly winter: number; readonly outcome: Outcome }[];
  readonly inspections: { readonly day: RoughDay; readonly field: InspectionField; readonly value: number }[];
  readonly mites: { readonly day: RoughDay; readonly sample: MiteSample }[];
  readonly harvests: { readonly day: RoughDay; readonly kilograms: number }[];
  readonly notes: string[];
  readonly problems: RowProblem[];
}

export function emptyRow(line: number): ReadRow {
  return { line, winters: [], inspections: [], mites: [], harvests: [], notes: [], problems: [] };
}

/** The letter of a column, as spreadsheets name it: A to Z, AA and so on. */
export function columnLetter(column: number): string {
  const rest = Math.floor(column / 26);
  return (rest > 0 ? columnLetter(rest - 1) : '') + String.fromCharCode(65 + (column % 26));
}

export function placeOf(line: number, mapping?: Pick<ColumnMapping, 'column' | 'header'>): string {
  if (!mapping) return `Row ${line}`;
  const name = mapping.header === '' ? '' : ` (${mapping.header})`;
  return `Row ${line}, column ${columnLetter(mapping.column)}${name}`;
}

export function rowProblem(
  line: number,
  mapping: Pick<ColumnMapping, 'column' | 'header' | 'field'> | undefined,
  text: {
    readonly found: string;
    readonly because: string;
    readonly remedy: string;
    readonly blocks: boolean;
  },
): RowProblem {
  return {
    code: 'row-invalid',
    where: placeOf(line, mapping),
    ...(mapping ? { field: mapping.field, column: mapping.column } : {}),
    ...text,
  };
}
