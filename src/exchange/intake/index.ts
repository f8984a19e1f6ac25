export { type ColumnMapping, guessColumns } from './columns.ts';
export { FIELD_NAMES, FIELDS, type Field } from './fields.ts';
export { cellKey, type Mended, mendTable } from './mend.ts';
export { type IntakeOptions, type IntakePlan, type PlannedRow, planIntake, type RowStatus } from './plan.ts';
export { type Answers, answerTo, type Option, type Question } from './questions.ts';
export type { RowProblem } from './row.ts';
export { readTable, type Table, type TableRow } from './table.ts';
