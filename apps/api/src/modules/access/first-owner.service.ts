import { Injectable } from '@nestjs/common';
import { Clock } from '../../platform/clock/clock';
import { Transactions } from '../../platform/database/transactions';
import { ProblemError } from '../../platform/problems';
import type { FirstOwnerDto } from './access.dto';
import * as repository from './access.repository';
import { hashSecret, newToken } from './secrets';
import { say } from '../../domain/words/say';

const INVITATION_HOURS = 72;

/** Creates the first owner of an empty database by a one-time link from the terminal. */
@Injectable()
export class FirstOwnerService {
  constructor(
    private readonly transactions: Transactions,
    private readonly clock: Clock,
  ) {}

  /** A new one-time token, or undefined when there is a user already. */
  async invite(): Promise<string | undefined> {
    const token = newToken();
    const expiresAt = new Date(this.clock.now().getTime() + INVITATION_HOURS * 3_600_000);
    return this.transactions.inTransaction(async (tx) => {
      if ((await repository.countUsers(tx)) > 0) return undefined;
      await tx.ownerInvitation.deleteMany({ where: { usedAt: null } });
      await repository.createInvitation(tx, token, expiresAt);
      return token;
    });
  }

  async accept(dto: FirstOwnerDto): Promise<{ userId: string }> {
    const passwordHash = await hashSecret(dto.password);
    return this.transactions.inTransaction(async (tx) => {
      const now = this.clock.now();
      const used = await repository.useInvitation(tx, dto.token, now);
      if (used.count !== 1 || (await repository.countUsers(tx)) > 0) {
        throw new ProblemError(
          'link-not-valid',
          403,
          say`This link is not valid`,
          say`The link was used already, has expired, or there is an owner. Start the service again on an empty database for a new link.`,
        );
      }
      const user = await repository.createUser(tx, {
        name: dto.name,
        role: 'owner',
        passwordHash,
        pinHash: null,
      });
      await tx.journalEntry.create({
        data: {
          at: now,
          userId: user.id,
          userName: user.name,
          action: 'user.first-owner-created',
          subjectKind: 'user',
          subjectId: user.name,
        },
      });
      return { userId: user.id };
    });
  }
}
