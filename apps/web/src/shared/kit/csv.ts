/**
 * RFC 4180, with a byte-order mark so that spreadsheets read the accents. A text that a spreadsheet
 * would run as a formula is kept a text by a leading apostrophe.
 */
const cell = (value: string): string => {
  const safe = /^[=@\t\r]|^[+-](?![\d.]+$)/.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
};

export const toCsv = (rows: readonly (readonly string[])[]): string =>
  `\ufeff${rows.map((row) => `${row.map(cell).join(',')}\r\n`).join('')}`;

export const saveText = (name: string, text: string, type = 'text/csv;charset=utf-8'): void => {
  saveBlob(name, new Blob([text], { type }));
};

export const saveBlob = (name: string, blob: Blob): void => {
  const url = URL.createObjectURL(blob);
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
};
