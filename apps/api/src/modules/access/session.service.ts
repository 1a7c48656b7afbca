import { Injectable } from '@nestjs/common';
import { Clock } from '../../platform/clock/clock';
import { DatabaseService } from '../../platform/database/database.service';
import { Transactions } from '../../platform/database/transactions';
import { ProblemError } from '../../platform/problems';
import type { OpenSession } from './access.repository';
import * as repository from './access.repository';
import { hashSecret, matchesSecret, newToken } from './secrets';
import { say } from '../../domain/words/say';

const BROWSER_HOURS = 12;
const SCRIPT_HOURS = 24 * 365;

const wrongName = (): ProblemError =>
  new ProblemError(
    'sign-in-failed',
    401,
    say`Name or password is wrong`,
    say`Check the name and the password. After too many tries wait a minute.`,
  );

@Injectable()
export class SessionService {
  /** Compared against when the name is unknown, so that both cases take equally long. */
  private readonly decoy = hashSecret('a password that nobody has');

  constructor(
    private readonly database: DatabaseService,
    private readonly transactions: Transactions,
    private readonly clock: Clock,
  ) {}

  async of(token: string | undefined): Promise<OpenSession | undefined> {
    if (token === undefined) return undefined;
    return repository.findSession(this.database.client, token, this.clock.now());
  }

  async signIn(
    name: string,
    password: string,
    kind: 'browser' | 'script',
  ): Promise<{ token: string; session: OpenSession }> {
    const user = await repository.findUserByName(this.database.client, name);
    const matches = await matchesSecret(user?.passwordHash ?? (await this.decoy), password);
    if (user === null || !user.active || !matches) throw wrongName();
    return this.open(user.id, kind);
  }

  /** Another person takes over the bench tablet with their PIN. */
  async switchTo(userId: string, pin: string): Promise<{ token: string; session: OpenSession }> {
    const user = await repository.findUser(this.database.client, userId);
    const matches = await matchesSecret(user?.pinHash ?? (await this.decoy), pin);
    if (user === null || !user.active || user.pinHash === null || !matches) throw wrongName();
    return this.open(user.id, 'browser');
  }

  async end(token: string | undefined): Promise<void> {
    const session = await this.of(token);
    if (session === undefined) return;
    await this.transactions.inTransaction((tx) =>
      repository.endSession(tx, session.sessionId, this.clock.now()),
    );
  }

  private async open(
    userId: string,
    kind: 'browser' | 'script',
  ): Promise<{ token: string; session: OpenSession }> {
    const token = newToken();
    const now = this.clock.now();
    const hours = kind === 'browser' ? BROWSER_HOURS : SCRIPT_HOURS;
    const expiresAt = new Date(now.getTime() + hours * 3_600_000);
    await this.transactions.inTransaction((tx) =>
      repository.createSession(tx, { userId, kind, token, now, expiresAt }),
    );
    const session = await this.of(token);
    if (session === undefined) throw wrongName();
    return { token, session };
  }
}
