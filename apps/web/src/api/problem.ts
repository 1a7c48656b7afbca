/** RFC 9457 problem details as the service sends them. */
export interface Problem {
  readonly type: string;
  readonly title: string;
  readonly status: number;
  readonly detail?: string;
  readonly errors?: readonly { readonly pointer: string; readonly message: string }[];
  readonly facts?: Readonly<Record<string, unknown>>;
}

export class ProblemError extends Error {
  constructor(readonly problem: Problem) {
    super(problem.detail ?? problem.title);
    this.name = 'ProblemError';
  }
}

/** The service could not be reached: nothing is known about what happened to the request. */
export class UnreachableError extends Error {
  constructor(cause: unknown) {
    super('the service could not be reached', { cause });
    this.name = 'UnreachableError';
  }
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;

/** Reads a failed answer, whatever it holds: a proxy's page of HTML still becomes a problem. */
export const asProblem = (body: unknown, status: number): Problem => {
  if (isRecord(body) && typeof body['title'] === 'string') {
    return { ...(body as unknown as Problem), status };
  }
  return { type: 'about:blank', title: `HTTP ${status}`, status };
};

/** The stable slug at the end of a problem's type. */
export const problemCode = (problem: Problem): string =>
  problem.type.split(/[/#:]/).filter(Boolean).at(-1) ?? problem.type;

/** JSON pointers as the paths that forms use: `/lines/0/quantity` is `lines.0.quantity`. */
export const fieldErrors = (problem: Problem): Record<string, string> =>
  Object.fromEntries(
    (problem.errors ?? []).map(({ pointer, message }) => [
      pointer.replace(/^#?\//, '').replaceAll('/', '.'),
      message,
    ]),
  );
