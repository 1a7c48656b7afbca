import { applyDecorators, SetMetadata } from '@nestjs/common';
import { ApiHeader } from '@nestjs/swagger';

export const BOOKS = 'books';

/** Marks a route that changes stock: it takes an Idempotency-Key and happens once. */
export const Books = (): MethodDecorator & ClassDecorator =>
  applyDecorators(
    SetMetadata(BOOKS, true),
    ApiHeader({
      name: 'Idempotency-Key',
      required: true,
      description: '8–200 characters, new for each booking; a repeat gets the first answer back.',
    }),
  );
