import { createHash, randomBytes } from 'node:crypto';
import { hash, verify } from '@node-rs/argon2';

/** OWASP's first choice for argon2id: 19 MiB, two passes, one lane. */
const ARGON2 = { memoryCost: 19_456, timeCost: 2, parallelism: 1 } as const;

export const hashSecret = (secret: string): Promise<string> => hash(secret, ARGON2);

export const matchesSecret = (stored: string, secret: string): Promise<boolean> =>
  verify(stored, secret);

/** 256 random bits, as text that fits a cookie and a URL. */
export const newToken = (): string => randomBytes(32).toString('base64url');

/** Only this is stored, so a copy of the database opens no session. */
export const tokenHash = (token: string): string =>
  createHash('sha256').update(token).digest('hex');
