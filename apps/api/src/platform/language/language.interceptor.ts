import {
  type CallHandler,
  type ExecutionContext,
  Injectable,
  type NestInterceptor,
  StreamableFile,
} from '@nestjs/common';
import type { Request, Response } from 'express';
import { map, type Observable } from 'rxjs';
import { languageOf, markLanguage } from './reader-language';
import { spoken } from './spoken';

/**
 * Tells an answer in the reader's language. It stands outside of all others, so that an answer kept
 * under an Idempotency-Key is told anew to whoever repeats the request.
 */
@Injectable()
export class LanguageInterceptor implements NestInterceptor {
  intercept(context: ExecutionContext, next: CallHandler): Observable<unknown> {
    const http = context.switchToHttp();
    const language = languageOf(http.getRequest<Request>());
    return next.handle().pipe(
      map((answer: unknown) => {
        if (answer instanceof StreamableFile || answer === undefined) return answer;
        markLanguage(http.getResponse<Response>(), language);
        return spoken(answer, language);
      }),
    );
  }
}
