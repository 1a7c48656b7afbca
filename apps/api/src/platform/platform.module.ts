import { type DynamicModule, Global, Module } from '@nestjs/common';
import { Clock } from './clock/clock';
import type { Config } from './config/config';
import { CONFIG } from './config/config.token';
import { DATABASE, DatabaseService } from './database/database.service';
import type { Database } from './database/prisma';
import { Transactions } from './database/transactions';

/** What every slice may inject: configuration, clock, database, transaction runner. */
@Global()
@Module({})
export class PlatformModule {
  static with(config: Config, database: Database): DynamicModule {
    return {
      module: PlatformModule,
      providers: [
        { provide: CONFIG, useValue: config },
        { provide: DATABASE, useValue: database },
        Clock,
        DatabaseService,
        Transactions,
      ],
      exports: [CONFIG, Clock, DatabaseService, Transactions],
    };
  }
}
