export { AccessModule } from './access.module';
export { FirstOwnerService } from './first-owner.service';
export { Allow, AllowReaders, EVERYONE, Public } from './roles';
export { SessionService } from './session.service';
export { UsersService } from './users.service';
