import type { Request, Response } from 'express';
import { READER_LANGUAGES, type ReaderLanguage } from '../../domain/words/in-language';

/**
 * What the reader asked for: `?language=` of a link, which a browser opens without the headers of the
 * app, else Accept-Language. English when that is none that we speak.
 */
export const languageOf = (request: Request): ReaderLanguage => {
  const linked = READER_LANGUAGES.find((language) => language === request.query['language']);
  if (linked !== undefined) return linked;
  const accepted = request.acceptsLanguages([...READER_LANGUAGES]);
  return READER_LANGUAGES.find((language) => language === accepted) ?? 'en';
};

/** Says in which language the answer is, and that another reader gets another answer. */
export const markLanguage = (response: Response, language: ReaderLanguage): void => {
  response.vary('Accept-Language');
  response.header('Content-Language', language);
};
