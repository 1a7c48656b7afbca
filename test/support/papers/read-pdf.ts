import { spawnSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';

export interface ReadItem {
  readonly text: string;
  readonly font: string;
  readonly xMm: number;
  readonly yMm: number;
  readonly widthMm: number;
  readonly sizePt: number;
  /** Reads upwards: `widthMm` is its height on the page. */
  readonly turned: boolean;
}

export interface ReadSymbol {
  readonly dpi: number;
  readonly page: number;
  readonly format: string;
  readonly text: string;
  readonly symbologyIdentifier: string;
}

export interface ReadPdf {
  readonly title: string;
  readonly language: string;
  readonly pages: readonly {
    readonly widthMm: number;
    readonly heightMm: number;
    readonly text: string;
    readonly items: readonly ReadItem[];
  }[];
  readonly fonts: Readonly<Record<string, { readonly name: string; readonly embedded: boolean }>>;
  readonly symbols: readonly ReadSymbol[];
}

interface Answer extends ReadPdf {
  readonly images: readonly { readonly dpi: number; readonly page: number; readonly png: string }[];
}

/** Where pages are left to be looked at, when PAPERS_TO says so. */
const keepImages = (name: string, { images }: Answer): void => {
  const folder = process.env['PAPERS_TO'];
  if (folder === undefined) return;
  mkdirSync(folder, { recursive: true });
  for (const { dpi, page, png } of images) {
    writeFileSync(path.join(folder, `${name}-${page}-${dpi}.png`), Buffer.from(png, 'base64'));
  }
};

/**
 * Reads a PDF back with pdf.js: text, fonts, title, language; renders it at each resolution and
 * decodes the bar codes in the picture. With PAPERS_TO=folder the pictures are kept under `name`.
 */
export const readPdf = (bytes: Buffer, name: string, dpis: readonly number[] = []): ReadPdf => {
  const images = process.env['PAPERS_TO'] !== undefined;
  const resolutions = images && dpis.length === 0 ? [100] : dpis;
  const options = JSON.stringify({ dpis: resolutions, images });
  const child = spawnSync(process.execPath, [path.join(__dirname, 'read-pdf.mjs'), options], {
    input: bytes,
    maxBuffer: 512 * 1024 * 1024,
  });
  if (child.status !== 0) throw new Error(child.stderr.toString());
  const answer = JSON.parse(child.stdout.toString()) as Answer;
  keepImages(name, answer);
  return answer;
};

/** All text of a PDF, with white space evened out. */
export const allText = ({ pages }: ReadPdf): string =>
  pages
    .map(({ text }) => text)
    .join('\n')
    .replaceAll(/[\s\u00A0\u202F]+/g, ' ');
