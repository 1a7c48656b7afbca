import type { CookieOptions, Request } from 'express';

export const SESSION_COOKIE = 'ballotin_session';

const cookiesOf = (request: Request): Record<string, unknown> =>
  request.cookies as Record<string, unknown>;

/** The session's secret from the Authorization header or the cookie. */
export const sessionTokenOf = (request: Request): string | undefined => {
  const bearer = /^Bearer (\S{20,200})$/.exec(request.header('Authorization') ?? '');
  if (bearer?.[1] !== undefined) return bearer[1];
  const cookie = cookiesOf(request)[SESSION_COOKIE];
  return typeof cookie === 'string' ? cookie : undefined;
};

export const cookieOptions = (secure: boolean, expires: Date): CookieOptions => ({
  httpOnly: true,
  sameSite: 'strict',
  secure,
  path: '/',
  expires,
});
