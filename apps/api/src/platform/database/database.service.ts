import { Inject, Injectable, type OnModuleDestroy } from '@nestjs/common';
import type { Database } from './prisma';

export const DATABASE = Symbol('database');

/** Holds the connection pool for the life of the service. */
@Injectable()
export class DatabaseService implements OnModuleDestroy {
  constructor(@Inject(DATABASE) readonly client: Database) {}

  async onModuleDestroy(): Promise<void> {
    await this.client.$disconnect();
  }
}
