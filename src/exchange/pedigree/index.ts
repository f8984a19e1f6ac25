export { withAncestors } from './ancestry.ts';
export { PEDIGREE_DEFAULTS, type PedigreeOptions, pedigreeEntries } from './extract.ts';
export { PEDIGREE_PAGE_DEFAULTS, type PedigreePageOptions, pedigreePage } from './page.ts';
export { type TraitRecord, traitRecords } from './records.ts';
export { type PedigreeTableOptions, type PedigreeTables, pedigreeTables } from './table.ts';
