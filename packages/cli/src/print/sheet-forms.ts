/** What a sheet is written as. */
export const sheetForms = ['html', 'pdf'] as const;
export type SheetForm = (typeof sheetForms)[number];
