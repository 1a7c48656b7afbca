import type { Request, Response } from 'express';
import { READER_LANGUAGES, type ReaderLanguage } from '../../domain/words/in-language';

/** What the reader asked for with Accept-Language; English when that is none that we speak. */
export const languageOf = (request: Request): ReaderLanguage => {
  const accepted = request.acceptsLanguages([...READER_LANGUAGES]);
  return READER_LANGUAGES.find((language) => language === accepted) ?? 'en';
};

/** Says in which language the answer is, and that another reader gets another answer. */
export const markLanguage = (response: Response, language: ReaderLanguage): void => {
  response.vary('Accept-Language');
  response.header('Content-Language', language);
};
