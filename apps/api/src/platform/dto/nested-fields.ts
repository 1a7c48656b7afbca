import { applyDecorators, type Type as Class } from '@nestjs/common';
import { Type } from 'class-transformer';
import { ArrayMaxSize, ArrayMinSize, IsArray, IsObject, ValidateNested } from 'class-validator';
import { documented, type FieldOptions, presence } from './text-fields';

export const Nested = (dto: () => Class<object>, options: FieldOptions = {}): PropertyDecorator =>
  applyDecorators(
    // Swagger takes a function for a lazy type only when its name is `type`, as this one's is.
    documented(options, { type: () => dto() }),
    ...presence(options),
    Type(dto),
    IsObject({ message: '$property must be an object' }),
    ValidateNested(),
  );

export interface ListOptions extends FieldOptions {
  readonly min?: number;
  readonly max?: number;
}

export const ListOf = (dto: () => Class<object>, options: ListOptions = {}): PropertyDecorator =>
  applyDecorators(
    documented(options, { type: () => dto(), isArray: true }),
    ...presence(options),
    Type(dto),
    IsArray({ message: '$property must be a list' }),
    ArrayMaxSize(options.max ?? 500, { message: '$property has more than $constraint1 entries' }),
    ...(options.min === undefined
      ? []
      : [ArrayMinSize(options.min, { message: '$property needs at least $constraint1 entry' })]),
    ValidateNested({ each: true }),
  );

/** A free JSON object that the owning slice checks with the domain's own validator. */
export const JsonObject = (options: FieldOptions = {}): PropertyDecorator =>
  applyDecorators(
    documented(options, { type: 'object', additionalProperties: true }),
    ...presence(options),
    IsObject({ message: '$property must be an object' }),
  );

/** A free JSON list, checked by the domain's own validator. */
export const JsonList = (options: FieldOptions = {}): PropertyDecorator =>
  applyDecorators(
    documented(options, { type: 'array', items: { type: 'object', additionalProperties: true } }),
    ...presence(options),
    IsArray({ message: '$property must be a list' }),
    ArrayMaxSize(500),
  );
