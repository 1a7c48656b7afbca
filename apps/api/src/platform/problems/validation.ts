import { ValidationPipe, type ValidationError } from '@nestjs/common';
import type { FieldProblem } from './problem';
import { ProblemError } from './problem-error';
import { say } from '../../domain/words/say';

const pointerPart = (name: string): string => name.replaceAll('~', '~0').replaceAll('/', '~1');

export const fieldProblems = (errors: readonly ValidationError[], above = ''): FieldProblem[] =>
  errors.flatMap((error) => {
    const pointer = `${above}/${pointerPart(error.property)}`;
    const own = Object.entries(error.constraints ?? {}).map(([rule, message]) => ({
      pointer,
      message:
        rule === 'whitelistValidation' ? say`${error.property} is not a known field` : message,
    }));
    return [...own, ...fieldProblems(error.children ?? [], pointer)];
  });

/** Refuses unknown fields and names every field that is wrong. */
export const validationPipe = (): ValidationPipe =>
  new ValidationPipe({
    transform: true,
    whitelist: true,
    forbidNonWhitelisted: true,
    forbidUnknownValues: true,
    stopAtFirstError: true,
    validationError: { target: false, value: false },
    exceptionFactory: (errors) =>
      new ProblemError(
        'fields-not-valid',
        400,
        say`Some fields are not right`,
        say`Put the fields right that are named under "errors" and send again. Nothing was booked.`,
        fieldProblems(errors),
      ),
  });
