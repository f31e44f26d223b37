/**
 * Text a spreadsheet would run as a formula; a CSV writer puts an apostrophe before it. Cells of more than one line count,
 * and the full-width signs, which some spreadsheets take for the plain ones.
 */
export const formulaStart = /^\s*[=+\-@＝＋－＠]|^[\t\r\n]/u;
