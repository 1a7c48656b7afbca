import { applyDecorators } from '@nestjs/common';
import { ApiProperty } from '@nestjs/swagger';
import { Transform } from 'class-transformer';
import {
  ArrayMaxSize,
  IsArray,
  IsIn,
  IsNotEmpty,
  IsOptional,
  IsString,
  IsUUID,
  Matches,
  MaxLength,
  MinLength,
  ValidateIf,
} from 'class-validator';
import { BOUND, FIELD } from './field-words';
import { say } from '../../domain/words/say';

/**
 * The service's field decorators: each both checks what comes in and documents it in OpenAPI, so
 * that the two can't differ. Text is normalised to NFC and trimmed; control characters and the
 * characters that turn the direction of text are refused. The check of the kind of value comes
 * first, because only the first failure of a field is told.
 */
export interface FieldOptions {
  readonly optional?: boolean;
  /** null is allowed: to clear a value, or in an answer. */
  readonly nullable?: boolean;
  readonly description?: string;
  readonly example?: string | number | boolean;
}

// prettier-ignore
const PLAIN =
  // eslint-disable-next-line no-control-regex -- refusing control characters is the point.
  /^[^\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]*$/u;

export const presence = (options: FieldOptions): PropertyDecorator[] => [
  ...(options.optional === true ? [IsOptional()] : []),
  ...(options.nullable === true ? [ValidateIf((_, value: unknown) => value !== null)] : []),
];

export const documented = (
  options: FieldOptions,
  rest: Record<string, unknown>,
): PropertyDecorator =>
  ApiProperty({
    required: options.optional !== true,
    ...(options.nullable === true ? { nullable: true } : {}),
    ...(options.description === undefined ? {} : { description: options.description }),
    ...(options.example === undefined ? {} : { example: options.example }),
    ...rest,
  });

const TOO_MANY = say`${FIELD} has more than ${BOUND} entries`;

const tidy = ({ value }: { value: unknown }): unknown =>
  typeof value === 'string' ? value.normalize('NFC').trim() : value;

export interface TextOptions extends FieldOptions {
  readonly max?: number;
  readonly min?: number;
  /** Empty text is allowed. */
  readonly empty?: boolean;
}

export const Text = (options: TextOptions = {}): PropertyDecorator =>
  applyDecorators(
    documented(options, { type: String, maxLength: options.max ?? 200 }),
    Transform(tidy),
    ...presence(options),
    IsString({ message: say`${FIELD} must be text` }),
    ...(options.empty === true ? [] : [IsNotEmpty({ message: say`${FIELD} must not be empty` })]),
    ...(options.min === undefined
      ? []
      : [MinLength(options.min, { message: say`${FIELD} needs ${BOUND} characters` })]),
    MaxLength(options.max ?? 200, { message: say`${FIELD} is longer than ${BOUND} characters` }),
    Matches(PLAIN, { message: say`${FIELD} must not hold control characters` }),
  );

export const Texts = (
  options: TextOptions & { readonly maxItems?: number } = {},
): PropertyDecorator =>
  applyDecorators(
    documented(options, { type: [String], maxItems: options.maxItems ?? 20 }),
    ...presence(options),
    IsArray({ message: say`${FIELD} must be a list` }),
    ArrayMaxSize(options.maxItems ?? 20, { message: TOO_MANY }),
    IsString({ each: true, message: say`${FIELD} must be a list of texts` }),
    MaxLength(options.max ?? 200, {
      each: true,
      message: say`each of ${FIELD} has at most ${BOUND} characters`,
    }),
    Matches(PLAIN, { each: true, message: say`${FIELD} must not hold control characters` }),
  );

export const Id = (options: FieldOptions = {}): PropertyDecorator =>
  applyDecorators(
    documented(options, { type: String, format: 'uuid' }),
    ...presence(options),
    IsUUID('all', { message: say`${FIELD} must be an id (UUID)` }),
  );

export const Ids = (
  options: FieldOptions & { readonly maxItems?: number } = {},
): PropertyDecorator =>
  applyDecorators(
    documented(options, { type: [String], format: 'uuid' }),
    ...presence(options),
    IsArray({ message: say`${FIELD} must be a list` }),
    ArrayMaxSize(options.maxItems ?? 500, { message: TOO_MANY }),
    IsUUID('all', { each: true, message: say`${FIELD} must be a list of ids (UUID)` }),
  );

export const Choice = (choices: readonly string[], options: FieldOptions = {}): PropertyDecorator =>
  applyDecorators(
    documented(options, { enum: [...choices] }),
    ...presence(options),
    IsIn([...choices], { message: say`${FIELD} must be one of: ${choices.join(', ')}` }),
  );

export const Choices = (
  choices: readonly string[],
  options: FieldOptions = {},
): PropertyDecorator =>
  applyDecorators(
    documented(options, { enum: [...choices], isArray: true }),
    ...presence(options),
    IsArray({ message: say`${FIELD} must be a list` }),
    IsIn([...choices], {
      each: true,
      message: say`each of ${FIELD} must be one of: ${choices.join(', ')}`,
    }),
  );
