import { applyDecorators, SetMetadata } from '@nestjs/common';
import { ApiForbiddenResponse, ApiUnauthorizedResponse } from '@nestjs/swagger';
import { Problem } from '../../platform/problems';
import type { Role } from '../../platform/requests/request-context';

export const ALLOWED_ROLES = 'allowedRoles';
export const EVERYONE: readonly Role[] = ['owner', 'maker', 'seller', 'auditor'];

const documentedRoles = (roles: readonly Role[]): MethodDecorator & ClassDecorator =>
  applyDecorators(
    SetMetadata(ALLOWED_ROLES, roles),
    ApiUnauthorizedResponse({ type: Problem }),
    ApiForbiddenResponse({ type: Problem }),
  );

/** The roles that may use a route. The owner always may; a route without a role is refused. */
export const Allow = (...roles: readonly Role[]): MethodDecorator & ClassDecorator =>
  documentedRoles(['owner', ...roles]);

/** Everyone who is signed in may read it, the auditor included. */
export const AllowReaders = (): MethodDecorator & ClassDecorator => documentedRoles(EVERYONE);

export const PUBLIC = 'public';

/** Open to anyone who reaches the service: signing in, health, the OpenAPI document. */
export const Public = (): MethodDecorator & ClassDecorator => SetMetadata(PUBLIC, true);
