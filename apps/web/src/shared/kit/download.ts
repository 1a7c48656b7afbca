import { asProblem, ProblemError, UnreachableError } from '../../api/problem';
import { languageHeader } from '../language/i18n';

/** What has come of a file so far. */
export interface Fetched {
  readonly doneBytes: number;
  /** Unknown when the service streams what it makes. */
  readonly totalBytes?: number;
}

const collect = async (
  body: ReadableStream<Uint8Array<ArrayBuffer>>,
  totalBytes: number | undefined,
  onFetched: (progress: Fetched) => void,
): Promise<Uint8Array<ArrayBuffer>[]> => {
  const parts: Uint8Array<ArrayBuffer>[] = [];
  let doneBytes = 0;
  const reader = body.getReader();
  for (;;) {
    const { done, value } = await reader.read();
    if (done) return parts;
    parts.push(value);
    doneBytes += value.byteLength;
    onFetched(totalBytes === undefined ? { doneBytes } : { doneBytes, totalBytes });
  }
};

/** Fetches a paper or an export; a refusal comes as a problem, and the signal stops it. */
export const fetchBlob = async (
  path: string,
  init: RequestInit = {},
  onFetched: (progress: Fetched) => void = () => undefined,
): Promise<Blob> => {
  let response: Response;
  try {
    const headers = new Headers(init.headers);
    headers.set('Accept-Language', languageHeader()['Accept-Language']);
    response = await fetch(path, { ...init, headers });
  } catch (cause) {
    if (init.signal?.aborted === true) throw cause;
    throw new UnreachableError(cause);
  }
  if (!response.ok || response.body === null) {
    const answer: unknown = await response.json().catch(() => undefined);
    throw new ProblemError(asProblem(answer, response.status));
  }
  const length = Number(response.headers.get('content-length'));
  const parts = await collect(response.body, length > 0 ? length : undefined, onFetched);
  return new Blob(parts, { type: response.headers.get('content-type') ?? '' });
};
