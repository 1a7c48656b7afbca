import type { Type } from '@nestjs/common';
import { ApiProperty } from '@nestjs/swagger';
import { Transform } from 'class-transformer';
import { IsInt, IsOptional, Max, MaxLength, Min } from 'class-validator';
import { BOUND, FIELD } from '../dto/field-words';
import { ProblemError } from '../problems/problem-error';
import { say } from '../../domain/words/say';

/** `?limit=&after=` of every list. */
export class PageQuery {
  @ApiProperty({ required: false, minimum: 1, maximum: 500, default: 50 })
  @IsOptional()
  @Transform(({ value }: { value: unknown }) => (typeof value === 'string' ? Number(value) : value))
  @IsInt({ message: say`${FIELD} must be a whole number` })
  @Min(1, { message: say`${FIELD} must not be below ${BOUND}` })
  @Max(500, { message: say`${FIELD} must not be above ${BOUND}` })
  limit?: number;

  @ApiProperty({ required: false, description: '`next` of the page before' })
  @IsOptional()
  @MaxLength(400, { message: say`${FIELD} is longer than ${BOUND} characters` })
  after?: string;
}

export interface Page<T> {
  readonly items: T[];
  /** Pass as `after` for the next page; null on the last. */
  readonly next: string | null;
}

/** The documented class of a page of views: `PageOf(SupplierView)`. */
export const PageOf = <T>(view: Type<T>): Type<Page<T>> => {
  class PageView implements Page<T> {
    @ApiProperty({ type: [view] })
    items: T[];

    @ApiProperty({ type: String, nullable: true })
    next: string | null;
  }
  Object.defineProperty(PageView, 'name', { value: `${view.name.replace(/View$/, '')}Page` });
  return PageView;
};

export const DEFAULT_LIMIT = 50;

export const limitOf = (query: PageQuery): number => query.limit ?? DEFAULT_LIMIT;

/** The sort key of the last row, as opaque text. */
export const encodeCursor = (parts: readonly string[]): string =>
  Buffer.from(JSON.stringify(parts)).toString('base64url');

/** @throws ProblemError when the text is not a cursor of `length` parts. */
export const decodeCursor = (text: string | undefined, length: number): string[] | undefined => {
  if (text === undefined) return undefined;
  try {
    const parts: unknown = JSON.parse(Buffer.from(text, 'base64url').toString('utf8'));
    if (
      Array.isArray(parts) &&
      parts.length === length &&
      parts.every((part): part is string => typeof part === 'string')
    ) {
      return parts;
    }
  } catch {
    // Falls through to the same refusal as a cursor of the wrong shape.
  }
  throw new ProblemError(
    'cursor-not-valid',
    400,
    say`Not a page of this list`,
    say`Leave "after" out to start again from the first page.`,
  );
};

/** Cuts one row more than asked into a page. `rows` holds up to limit + 1 rows. */
export const pageOf = <Row, View>(
  rows: readonly Row[],
  limit: number,
  view: (row: Row) => View,
  key: (row: Row) => readonly string[],
): Page<View> => {
  const shown = rows.slice(0, limit);
  const last = shown.at(-1);
  const more = rows.length > limit && last !== undefined;
  return { items: shown.map(view), next: more ? encodeCursor(key(last)) : null };
};
