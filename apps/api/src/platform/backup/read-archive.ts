import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { createGunzip } from 'node:zlib';
import {
  BackupError,
  END_OF_ROWS,
  type Footer,
  FORMAT,
  FORMAT_VERSION,
  type Header,
  type TableEnd,
  type TableStart,
} from './archive-format';
import { linesOf } from './lines';

const CHUNK_BYTES = 256 * 1024;

/** What to do with the parts of an archive as they come by. */
export interface ArchiveReader {
  readonly header: (header: Header) => Promise<void>;
  /** Consumes the rows of a table to their end. */
  readonly table: (start: TableStart, rows: AsyncIterable<Buffer>) => Promise<void>;
  /** Told once the rows have proved to be those that were saved. */
  readonly tableEnd?: (start: TableStart, end: TableEnd) => void;
  readonly footer: (footer: Footer) => Promise<void>;
}

const damaged = (what: string): BackupError =>
  new BackupError(`The archive is damaged: ${what}. Use another one.`);

class Walk {
  tables = 0;
  rows = 0;
  private end: TableEnd = { rows: 0, sha256: '' };

  constructor(private readonly lines: AsyncGenerator<Buffer, void>) {}

  async line(): Promise<string> {
    const { value, done } = await this.lines.next();
    if (done === true) throw damaged('it ends too early');
    return value.toString('utf8');
  }

  /** Reads to the end of the file; answers how many lines there were. */
  async rest(): Promise<number> {
    let lines = 0;
    while ((await this.lines.next()).done !== true) lines += 1;
    return lines;
  }

  /** The rows of the current table in chunks, counted and summed on the way. */
  async *data(): AsyncGenerator<Buffer> {
    const hash = createHash('sha256');
    let rows = 0;
    let chunk: Buffer[] = [];
    let size = 0;
    for (;;) {
      const { value, done } = await this.lines.next();
      if (done === true) throw damaged('it ends inside a table');
      if (value.length === END_OF_ROWS.length && value.toString('latin1') === END_OF_ROWS) break;
      rows += 1;
      hash.update(value).update('\n');
      chunk.push(value, Buffer.from('\n'));
      size += value.length + 1;
      if (size < CHUNK_BYTES) continue;
      yield Buffer.concat(chunk);
      chunk = [];
      size = 0;
    }
    if (size > 0) yield Buffer.concat(chunk);
    this.end = { rows, sha256: hash.digest('hex') };
  }

  async table(start: TableStart, reader: ArchiveReader): Promise<void> {
    await reader.table(start, this.data());
    const stated = JSON.parse(await this.line()) as TableEnd;
    if (stated.rows !== this.end.rows || stated.sha256 !== this.end.sha256) {
      throw damaged(`the rows of ${start.table} are not those that were saved`);
    }
    reader.tableEnd?.(start, stated);
    this.tables += 1;
    this.rows += this.end.rows;
  }
}

const readHeader = (line: string): Header => {
  try {
    const header = JSON.parse(line) as Header;
    if ((header.format as string) === FORMAT) {
      if ((header.version as number) === FORMAT_VERSION) return header;
      throw new BackupError('The archive was made by a newer version of Ballotin. Use that one.');
    }
  } catch (error) {
    if (error instanceof BackupError) throw error;
  }
  throw new BackupError('This file is not a backup of Ballotin.');
};

const explain = (error: unknown): unknown => {
  const { code } = error as NodeJS.ErrnoException;
  if (code === 'ENOENT') return new BackupError('There is no such file.');
  if (code === 'Z_DATA_ERROR' || code === 'Z_BUF_ERROR' || error instanceof SyntaxError) {
    return code === 'Z_DATA_ERROR'
      ? new BackupError('This file is not a backup of Ballotin, or it is damaged.')
      : damaged('it ends too early');
  }
  return error;
};

/**
 * Reads an archive from beginning to end, checks every sum on the way and hands the parts to
 * `reader`. Whatever was handed over counts only when the returned promise resolves.
 */
export const readArchive = async (file: string, reader: ArchiveReader): Promise<void> => {
  const raw = createReadStream(file);
  const gunzip = createGunzip();
  raw.on('error', (error) => gunzip.destroy(error));
  const walk = new Walk(linesOf(raw.pipe(gunzip)));
  try {
    await reader.header(readHeader(await walk.line()));
    for (;;) {
      const part = JSON.parse(await walk.line()) as TableStart | Footer;
      if ('table' in part) {
        await walk.table(part, reader);
        continue;
      }
      if (part.tables !== walk.tables || part.rows !== walk.rows)
        throw damaged('parts are missing');
      // The end of the gzip carries its own sum over everything.
      if ((await walk.rest()) > 0) throw damaged('it goes on after its end');
      await reader.footer(part);
      return;
    }
  } catch (error) {
    throw explain(error);
  } finally {
    raw.destroy();
    gunzip.destroy();
  }
};
