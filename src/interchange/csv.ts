/** What a spreadsheet would take for a formula begins with one of these; source: OWASP, "CSV Injection". */
const FORMULA = /^[=+\-@\t\r\n＝＋－＠]/u;

/** A field of RFC 4180; a text that a spreadsheet would run gets an apostrophe before it. */
function field(value: string | number): string {
  if (typeof value === 'number') return String(value);
  const safe = FORMULA.test(value.trimStart()) || FORMULA.test(value) ? `'${value}` : value;
  return /[",\r\n;]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** Rows as CSV (RFC 4180). */
export function csvOf(rows: readonly (readonly (string | number)[])[]): string {
  return rows.map((row) => `${row.map(field).join(',')}\r\n`).join('');
}
