import createClient, { type FetchOptions } from 'openapi-fetch';
import type { PathsWithMethod, SuccessResponseJSON } from 'openapi-typescript-helpers';
import { languageHeader } from '../shared/language/i18n';
import { asProblem, ProblemError, UnreachableError } from './problem';
import type { paths } from './schema';

const reach: typeof fetch = async (input, init) => {
  try {
    return await fetch(input, init);
  } catch (cause) {
    throw new UnreachableError(cause);
  }
};

/** The one client of the service. Its paths and bodies are generated from the OpenAPI document. */
export const api = createClient<paths>({ baseUrl: '/', fetch: (request) => reach(request) });

api.use({
  onRequest: ({ request }) => {
    for (const [name, value] of Object.entries(languageHeader())) request.headers.set(name, value);
    return request;
  },
});

interface Answer<T> {
  readonly data?: T;
  readonly error?: unknown;
  readonly response: Response;
}

/** The answer's data; a refusal is thrown as a problem. */
export const must = async <T>(asked: Promise<Answer<T>>): Promise<T> => {
  const { data, error, response } = await asked;
  if (!response.ok) throw new ProblemError(asProblem(error, response.status));
  return data as T;
};

export type GetPath = PathsWithMethod<paths, 'get'>;
export type PostPath = PathsWithMethod<paths, 'post'>;
export type GetInit<P extends GetPath> = FetchOptions<paths[P]['get']>;
export type Read<P extends GetPath> = SuccessResponseJSON<
  paths[P]['get'] & Record<string, unknown>
>;
export type Written<P extends PostPath> = SuccessResponseJSON<
  paths[P]['post'] & Record<string, unknown>
>;
export type Body<P extends PostPath> = paths[P]['post'] extends {
  requestBody: { content: { 'application/json': infer B } };
}
  ? B
  : undefined;

/** Reads a path of the service; typed by the document, one place to cast. */
export const read = <P extends GetPath>(path: P, init?: GetInit<P>): Promise<Read<P>> =>
  must((api.GET as (path: GetPath, init?: unknown) => Promise<Answer<Read<P>>>)(path, init));

/** A path template with its parameters filled in. */
export const fill = (path: string, values: Readonly<Record<string, string>> = {}): string =>
  path.replace(/\{(\w+)\}/g, (_whole, name: string) => encodeURIComponent(values[name] ?? ''));
