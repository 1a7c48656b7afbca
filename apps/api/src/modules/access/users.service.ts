import { Injectable } from '@nestjs/common';
import type { User } from '../../generated/prisma/client';
import { DatabaseService } from '../../platform/database/database.service';
import { type By, Transactions } from '../../platform/database/transactions';
import type { Tx } from '../../platform/database/prisma';
import { noteInJournal } from '../../platform/journal/journal';
import { orNotFound, RefusalError } from '../../platform/problems';
import { refuseIfStale } from '../../platform/requests/stale';
import type { ChangeUserDto, CreateUserDto, UserView } from './access.dto';
import * as repository from './access.repository';
import { hashSecret } from './secrets';
import { say } from '../../domain/words/say';

const userView = (user: User): UserView => ({
  id: user.id,
  name: user.name,
  role: user.role,
  hasPin: user.pinHash !== null,
  active: user.active,
  version: user.version,
});

@Injectable()
export class UsersService {
  constructor(
    private readonly database: DatabaseService,
    private readonly transactions: Transactions,
  ) {}

  async list(): Promise<UserView[]> {
    return (await repository.listUsers(this.database.client)).map(userView);
  }

  async create(dto: CreateUserDto): Promise<UserView> {
    const passwordHash = await hashSecret(dto.password);
    const pinHash = dto.pin === undefined ? null : await hashSecret(dto.pin);
    return this.transactions.book(async (tx, by) => {
      await refuseTakenName(tx, dto.name);
      const user = await repository.createUser(tx, {
        name: dto.name,
        role: dto.role,
        passwordHash,
        pinHash,
      });
      noteInJournal(by, {
        action: 'user.created',
        subjectKind: 'user',
        subjectId: user.name,
        detail: { role: user.role },
      });
      return userView(user);
    });
  }

  async change(id: string, seen: number, dto: ChangeUserDto): Promise<UserView> {
    const passwordHash = dto.password === undefined ? undefined : await hashSecret(dto.password);
    const pinHash = typeof dto.pin === 'string' ? await hashSecret(dto.pin) : dto.pin;
    return this.transactions.book(async (tx, by) => {
      const user = orNotFound(await repository.findUser(tx, id), 'user', id);
      refuseIfStale('user', seen, user.version);
      await refuseLastOwnerGone(tx, user, dto);
      const changed = await tx.user.update({
        where: { id },
        data: {
          ...(dto.role === undefined ? {} : { role: dto.role }),
          ...(dto.active === undefined ? {} : { active: dto.active }),
          ...(passwordHash === undefined ? {} : { passwordHash }),
          ...(pinHash === undefined ? {} : { pinHash }),
          version: { increment: 1 },
        },
      });
      await this.endSessionsWhenNeeded(tx, by, changed, dto);
      return userView(changed);
    });
  }

  private async endSessionsWhenNeeded(
    tx: Tx,
    by: By,
    user: User,
    dto: ChangeUserDto,
  ): Promise<void> {
    const mustSignInAgain = dto.password !== undefined || dto.active === false;
    if (mustSignInAgain) await repository.endSessionsOf(tx, user.id, by.at);
    noteInJournal(by, {
      action: 'user.changed',
      subjectKind: 'user',
      subjectId: user.name,
      detail: {
        role: user.role,
        active: user.active,
        passwordChanged: dto.password !== undefined,
        pinChanged: dto.pin !== undefined,
      },
    });
  }
}

const refuseTakenName = async (tx: Tx, name: string): Promise<void> => {
  if ((await repository.findUserByName(tx, name)) === null) return;
  throw new RefusalError({
    code: 'already-exists',
    detail: say`There is a user "${name}" already. Choose another name.`,
  });
};

const refuseLastOwnerGone = async (tx: Tx, user: User, dto: ChangeUserDto): Promise<void> => {
  const leaves = (dto.role !== undefined && dto.role !== 'owner') || dto.active === false;
  if (user.role !== 'owner' || !leaves) return;
  const owners = await tx.user.count({ where: { role: 'owner', active: true } });
  if (owners > 1) return;
  throw new RefusalError({
    code: 'still-in-use',
    detail: say`${user.name} is the only owner. Make someone else an owner first.`,
  });
};
