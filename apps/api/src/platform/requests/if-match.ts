import { createParamDecorator, type ExecutionContext } from '@nestjs/common';
import type { Request } from 'express';
import { ProblemError } from '../problems/problem-error';
import { say } from '../../domain/words/say';

/**
 * The version that the client last saw, from `If-Match: "3"`.
 * @throws ProblemError 428 when it is missing, 400 when it can't be read.
 */
export const IfMatch = createParamDecorator((_: unknown, context: ExecutionContext): number => {
  const header = context.switchToHttp().getRequest<Request>().header('If-Match');
  if (header === undefined) {
    throw new ProblemError(
      'if-match-required',
      428,
      say`If-Match missing`,
      say`Send If-Match with the version that you last read, so that nobody is overwritten.`,
    );
  }
  const match = /^(?:W\/)?"?(\d{1,9})"?$/.exec(header.trim());
  if (match?.[1] === undefined) {
    throw new ProblemError('malformed', 400, say`If-Match not readable`, say`Send If-Match: "3".`);
  }
  return Number(match[1]);
});
