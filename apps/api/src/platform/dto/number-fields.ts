import { applyDecorators } from '@nestjs/common';
import { Transform } from 'class-transformer';
import {
  ArrayMaxSize,
  IsArray,
  IsBoolean,
  IsInt,
  Matches,
  Max,
  Min,
  Validate,
  ValidatorConstraint,
} from 'class-validator';
import type { ValidatorConstraintInterface } from 'class-validator';
import { Temporal } from 'temporal-polyfill';
import { documented, type FieldOptions, presence } from './text-fields';
import { BOUND, FIELD } from './field-words';
import { say } from '../../domain/words/say';

export interface DecimalOptions extends FieldOptions {
  /** Digits after the point. */
  readonly places?: number;
  readonly negative?: boolean;
  /** Nothing at all is refused too, where something is divided by it. */
  readonly positive?: boolean;
}

const decimalPattern = (places: number, negative: boolean): RegExp => {
  const fraction = places === 0 ? '' : `(\\.[0-9]{1,${String(places)}})?`;
  return new RegExp(`^${negative ? '-?' : ''}(0|[1-9][0-9]{0,9})${fraction}$`);
};

/** An exact decimal as JSON text: "250.000". Never a JSON number. */
export const DecimalText = (options: DecimalOptions = {}): PropertyDecorator => {
  const places = options.places ?? 3;
  const pattern = decimalPattern(places, options.negative === true);
  return applyDecorators(
    documented(options, { type: String, format: 'decimal', pattern: pattern.source }),
    ...presence(options),
    Matches(pattern, {
      message: say`${FIELD} must be a decimal number as text, as "12.5", with at most ${places} decimals`,
    }),
    ...(options.positive === true
      ? [Matches(/[1-9]/, { message: say`${FIELD} must be more than 0` })]
      : []),
  );
};

/** Grams, three decimals. */
export const Grams = (
  options: Pick<DecimalOptions, keyof FieldOptions | 'positive'> = {},
): PropertyDecorator => DecimalText({ ...options, places: 3 });

/** In the unit of the item: grams with three decimals, or whole pieces. */
export const Quantity = (options: FieldOptions = {}): PropertyDecorator =>
  DecimalText({ ...options, places: 3 });

/** Money in the workshop's currency, four decimals. */
export const Money = (options: FieldOptions = {}): PropertyDecorator =>
  DecimalText({ ...options, places: 4 });

@ValidatorConstraint({ name: 'isDay' })
class IsDay implements ValidatorConstraintInterface {
  validate(value: unknown): boolean {
    if (typeof value !== 'string' || !/^\d{4}-\d{2}-\d{2}$/.test(value)) return false;
    try {
      Temporal.PlainDate.from(value, { overflow: 'reject' });
      return true;
    } catch {
      return false;
    }
  }
  defaultMessage(): string {
    return say`${FIELD} must be a day of the calendar, as 2026-11-25`;
  }
}

export const Day = (options: FieldOptions = {}): PropertyDecorator =>
  applyDecorators(
    documented(options, { type: String, format: 'date' }),
    ...presence(options),
    Validate(IsDay),
  );

@ValidatorConstraint({ name: 'isInstant' })
class IsInstant implements ValidatorConstraintInterface {
  validate(value: unknown): boolean {
    if (typeof value !== 'string') return false;
    try {
      Temporal.Instant.from(value);
      return true;
    } catch {
      return false;
    }
  }
  defaultMessage(): string {
    return say`${FIELD} must be an instant with its offset, as 2026-11-25T08:30:00+01:00`;
  }
}

export const Instant = (options: FieldOptions = {}): PropertyDecorator =>
  applyDecorators(
    documented(options, { type: String, format: 'date-time' }),
    ...presence(options),
    Validate(IsInstant),
  );

export interface WholeOptions extends FieldOptions {
  readonly min?: number;
  readonly max?: number;
  /** The value comes from a query string. */
  readonly fromQuery?: boolean;
}

export const Whole = (options: WholeOptions = {}): PropertyDecorator =>
  applyDecorators(
    documented(options, {
      type: 'integer',
      minimum: options.min ?? 0,
      maximum: options.max ?? 1e9,
    }),
    ...(options.fromQuery === true
      ? [
          Transform(({ value }: { value: unknown }) =>
            typeof value === 'string' ? Number(value) : value,
          ),
        ]
      : []),
    ...presence(options),
    IsInt({ message: say`${FIELD} must be a whole number` }),
    Min(options.min ?? 0, { message: say`${FIELD} must not be below ${BOUND}` }),
    Max(options.max ?? 1e9, { message: say`${FIELD} must not be above ${BOUND}` }),
  );

export const Flag = (
  options: FieldOptions & { readonly fromQuery?: boolean } = {},
): PropertyDecorator =>
  applyDecorators(
    documented(options, { type: Boolean }),
    ...(options.fromQuery === true
      ? [
          Transform(({ value }: { value: unknown }) =>
            value === 'true' ? true : value === 'false' ? false : value,
          ),
        ]
      : []),
    ...presence(options),
    IsBoolean({ message: say`${FIELD} must be true or false` }),
  );

export const Wholes = (options: WholeOptions = {}): PropertyDecorator =>
  applyDecorators(
    documented(options, { type: 'integer', isArray: true }),
    ...presence(options),
    Max(options.max ?? 1e9, { each: true, message: say`each of ${FIELD} is ${BOUND} at most` }),
    Min(options.min ?? 0, { each: true, message: say`each of ${FIELD} is ${BOUND} at least` }),
    IsInt({ each: true, message: say`${FIELD} must be a list of whole numbers` }),
    ArrayMaxSize(1000, { message: say`${FIELD} has more than ${BOUND} entries` }),
    IsArray({ message: say`${FIELD} must be a list` }),
  );
