const NEUTRALISED = /^'(?=[=+\-@\t\r])/;

/** A cell without the apostrophe that our own files put before what a spreadsheet would run as a formula. */
export const withoutFormulaMark = (cell: string): string => cell.replace(NEUTRALISED, '');
