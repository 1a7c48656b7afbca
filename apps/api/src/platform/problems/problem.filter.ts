import {
  type ArgumentsHost,
  Catch,
  type ExceptionFilter,
  HttpException,
  Logger,
} from '@nestjs/common';
import type { Request, Response } from 'express';
import { languageOf, markLanguage } from '../language/reader-language';
import { spoken } from '../language/spoken';
import { problemOfDatabase } from './database-problems';
import { type Problem, problemType } from './problem';
import { ProblemError } from './problem-error';
import { problemTable } from './problem-table';
import { RefusalError } from './refusal-error';
import { say } from '../../domain/words/say';

const httpTitles: Readonly<Record<number, [string, string, string]>> = {
  400: ['malformed', say`Malformed request`, say`The request could not be read. Check its format.`],
  401: ['not-signed-in', say`Not signed in`, say`Sign in and try again.`],
  403: ['not-allowed', say`Not allowed`, say`Your role does not allow this. Ask the owner.`],
  404: ['no-such-page', say`Not found`, say`There is nothing at this address.`],
  405: ['no-such-page', say`Not possible here`, say`This address does not take such a request.`],
  413: ['too-large', say`Too large`, say`What was sent is too large.`],
  415: ['wrong-format', say`Wrong format`, say`Send JSON with Content-Type: application/json.`],
  429: ['too-many-tries', say`Too many tries`, say`Wait a minute and try again.`],
};

/** Body parsers and such throw plain errors that carry an HTTP status. */
const httpStatusOf = (error: unknown): number | undefined => {
  if (error instanceof HttpException) return error.getStatus();
  const status: unknown =
    typeof error === 'object' && error !== null ? Reflect.get(error, 'status') : undefined;
  return typeof status === 'number' && status >= 400 && status < 500 ? status : undefined;
};

export const problemOf = (error: unknown): Problem | undefined => {
  if (error instanceof RefusalError) {
    const { code, detail, facts } = error.refusal;
    const shape = problemTable[code];
    return { type: problemType(code), ...shape, detail, ...(facts === undefined ? {} : { facts }) };
  }
  if (error instanceof ProblemError) {
    const { slug, title, status, detail, errors } = error;
    return {
      type: problemType(slug),
      title,
      status,
      detail,
      ...(errors === undefined ? {} : { errors: [...errors] }),
    };
  }
  const status = httpStatusOf(error);
  if (status !== undefined && status < 500) {
    const [slug, title, detail] = httpTitles[status] ?? httpTitles[400] ?? ['malformed', '', ''];
    return { type: problemType(slug), title, status, detail };
  }
  return problemOfDatabase(error);
};

/** Answers every failure as problem+json; what nobody expected is logged and shown as 500. */
@Catch()
export class ProblemFilter implements ExceptionFilter {
  private readonly logger = new Logger('problem');

  catch(error: unknown, host: ArgumentsHost): void {
    const http = host.switchToHttp();
    const response = http.getResponse<Response>();
    const problem = problemOf(error) ?? this.unexpected(error);
    if (response.headersSent) {
      response.destroy();
      return;
    }
    const language = languageOf(http.getRequest<Request>());
    markLanguage(response, language);
    response
      .status(problem.status)
      .header('Content-Type', 'application/problem+json; charset=utf-8')
      .send(JSON.stringify(spoken(problem, language)));
  }

  private unexpected(error: unknown): Problem {
    this.logger.error(error instanceof Error ? (error.stack ?? error.message) : String(error));
    return {
      type: problemType('fault'),
      title: say`A fault in the service`,
      status: 500,
      detail: say`Something went wrong in the service. Nothing was booked. The fault is in its log.`,
    };
  }
}
