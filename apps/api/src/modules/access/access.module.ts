import { Module } from '@nestjs/common';
import { APP_GUARD } from '@nestjs/core';
import { ThrottlerModule } from '@nestjs/throttler';
import { SessionController, UsersController } from './access.controller';
import { AccessGuard } from './access.guard';
import { FirstOwnerService } from './first-owner.service';
import { SessionService } from './session.service';
import { UsersService } from './users.service';

/** Twenty tries to sign in a minute from one address. */
const SIGN_IN_LIMIT = { ttl: 60_000, limit: 20 };

@Module({
  imports: [ThrottlerModule.forRoot([SIGN_IN_LIMIT])],
  controllers: [SessionController, UsersController],
  providers: [
    SessionService,
    UsersService,
    FirstOwnerService,
    { provide: APP_GUARD, useClass: AccessGuard },
  ],
  exports: [SessionService, UsersService, FirstOwnerService],
})
export class AccessModule {}
