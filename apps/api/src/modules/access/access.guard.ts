import { type CanActivate, type ExecutionContext, Injectable } from '@nestjs/common';
import { Reflector } from '@nestjs/core';
import type { Request } from 'express';
import { ProblemError } from '../../platform/problems';
import { type Role, setActor } from '../../platform/requests/request-context';
import { ALLOWED_ROLES, PUBLIC } from './roles';
import { SessionService } from './session.service';
import { sessionTokenOf } from './session-token';
import { anyOf, named, say } from '../../domain/words/say';

/** Refuses every route that does not name its roles, and everyone whose role is not named. */
@Injectable()
export class AccessGuard implements CanActivate {
  constructor(
    private readonly reflector: Reflector,
    private readonly sessions: SessionService,
  ) {}

  async canActivate(context: ExecutionContext): Promise<boolean> {
    const targets = [context.getHandler(), context.getClass()];
    if (this.reflector.getAllAndOverride<boolean | undefined>(PUBLIC, targets) === true)
      return true;
    const request = context.switchToHttp().getRequest<Request>();
    const session = await this.sessions.of(sessionTokenOf(request));
    if (session === undefined) {
      throw new ProblemError(
        'not-signed-in',
        401,
        say`Not signed in`,
        say`Sign in and try again. A session ends after twelve hours or when someone ends it.`,
      );
    }
    const roles =
      this.reflector.getAllAndOverride<Role[] | undefined>(ALLOWED_ROLES, targets) ?? [];
    if (!roles.includes(session.role)) {
      throw new ProblemError(
        'not-allowed',
        403,
        say`Not allowed for your role`,
        say`You are signed in as ${session.userName} (${named(session.role)}). This needs: ${roles.length === 0 ? say`nobody` : anyOf(roles.map(named))}. Ask the owner.`,
      );
    }
    setActor({
      userId: session.userId,
      userName: session.userName,
      role: session.role,
      fromAddress: request.ip ?? null,
      workshop: session.workshop,
    });
    return true;
  }
}
