import { applyDecorators, type Type as Class } from '@nestjs/common';
import { Type } from 'class-transformer';
import { ArrayMaxSize, ArrayMinSize, IsArray, IsObject, ValidateNested } from 'class-validator';
import { documented, type FieldOptions, presence } from './text-fields';
import { BOUND, FIELD } from './field-words';
import { say } from '../../domain/words/say';

export const Nested = (dto: () => Class<object>, options: FieldOptions = {}): PropertyDecorator =>
  applyDecorators(
    // Swagger takes a function for a lazy type only when its name is `type`, as this one's is.
    documented(options, { type: () => dto() }),
    ...presence(options),
    Type(dto),
    IsObject({ message: say`${FIELD} must be an object` }),
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
    IsArray({ message: say`${FIELD} must be a list` }),
    ArrayMaxSize(options.max ?? 500, { message: say`${FIELD} has more than ${BOUND} entries` }),
    ...(options.min === undefined
      ? []
      : [ArrayMinSize(options.min, { message: say`${FIELD} needs at least ${BOUND} entry` })]),
    ValidateNested({ each: true }),
  );

/** A free JSON object that the owning slice checks with the domain's own validator. */
export const JsonObject = (options: FieldOptions = {}): PropertyDecorator =>
  applyDecorators(
    documented(options, { type: 'object', additionalProperties: true }),
    ...presence(options),
    IsObject({ message: say`${FIELD} must be an object` }),
  );

/** A free JSON list, checked by the domain's own validator. */
export const JsonList = (options: FieldOptions = {}): PropertyDecorator =>
  applyDecorators(
    documented(options, { type: 'array', items: { type: 'object', additionalProperties: true } }),
    ...presence(options),
    IsArray({ message: say`${FIELD} must be a list` }),
    ArrayMaxSize(500, { message: say`${FIELD} has more than ${BOUND} entries` }),
  );
