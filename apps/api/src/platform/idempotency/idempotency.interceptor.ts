import { createHash } from 'node:crypto';
import {
  type CallHandler,
  type ExecutionContext,
  HttpStatus,
  Injectable,
  type NestInterceptor,
} from '@nestjs/common';
import { HTTP_CODE_METADATA } from '@nestjs/common/constants';
import { Reflector } from '@nestjs/core';
import type { Request } from 'express';
import type { Observable } from 'rxjs';
import { ProblemError } from '../problems/problem-error';
import { setClaim } from '../requests/request-context';
import { BOOKS } from './books.decorator';
import { say } from '../../domain/words/say';

const KEY = /^[\x21-\x7e]{8,200}$/;

/** Puts the request's Idempotency-Key where the transaction runner finds it. */
@Injectable()
export class IdempotencyInterceptor implements NestInterceptor {
  constructor(private readonly reflector: Reflector) {}

  intercept(context: ExecutionContext, next: CallHandler): Observable<unknown> {
    const request = context.switchToHttp().getRequest<Request>();
    const books = this.reflector.get<boolean | undefined>(BOOKS, context.getHandler()) === true;
    const key = request.header('Idempotency-Key');
    if (books && (key === undefined || !KEY.test(key))) {
      throw new ProblemError(
        'idempotency-key-required',
        400,
        say`Idempotency-Key missing`,
        say`Send an Idempotency-Key header of 8 to 200 printable characters, new for each booking, so that a repeated request is booked once.`,
      );
    }
    if (books && key !== undefined) {
      const status = this.reflector.get<number | undefined>(
        HTTP_CODE_METADATA,
        context.getHandler(),
      );
      setClaim({
        key,
        method: request.method,
        path: request.originalUrl.split('?')[0] ?? request.path,
        bodyHash: createHash('sha256')
          .update(JSON.stringify(request.body ?? null))
          .digest('hex'),
        status: status ?? HttpStatus.CREATED,
      });
    }
    return next.handle();
  }
}
