// Tables as CSV (RFC 4180), for spreadsheets: a byte order mark, so that they read it as UTF-8.

export function csvText(columns: readonly string[], rows: readonly (readonly string[])[]): string {
  return `\uFEFF${[columns, ...rows].map((row) => `${row.map(cell).join(',')}\r\n`).join('')}`;
}

/** Text that a spreadsheet would take for a formula is marked as text. */
function cell(value: string): string {
  const safe = /^[=@\t\r]/.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
