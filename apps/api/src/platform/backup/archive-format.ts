import type { MigrationFile } from '../migrations';

/**
 * The archive is one gzip of lines of text: a header, then for each table a line that opens it,
 * its rows in PostgreSQL's COPY text format (one row a line; a new line inside a value is escaped
 * there), the line `\.`, and a line that closes it; at the end the footer. An archive that was cut
 * off has no footer and is refused. `zcat` shows everything.
 */
export const FORMAT = 'ballotin-backup';
export const FORMAT_VERSION = 1;
export const END_OF_ROWS = '\\.';

export interface Header {
  readonly format: typeof FORMAT;
  readonly version: typeof FORMAT_VERSION;
  readonly takenAt: string;
  /** The schema: every migration that the database had, oldest first. */
  readonly migrations: readonly Pick<MigrationFile, 'name' | 'checksum'>[];
}

export interface TableStart {
  readonly table: string;
  readonly columns: readonly string[];
}

export interface TableEnd {
  readonly rows: number;
  /** sha256 of the rows as they stand in the archive, hex. */
  readonly sha256: string;
}

export interface SequenceValue {
  readonly name: string;
  /** Next numbers are taken after this one; null when none was ever taken. */
  readonly last: string | null;
}

export interface Footer {
  readonly sequences: readonly SequenceValue[];
  readonly tables: number;
  readonly rows: number;
}

/** What a backup or a restore has moved. */
export interface BackupSummary {
  readonly takenAt: string;
  readonly schema: string;
  readonly tables: number;
  readonly rows: number;
}

/** The archive or the database does not allow it. The message is for whoever runs the command. */
export class BackupError extends Error {
  override readonly name = 'BackupError';
}
