import { Choice, Flag, Id, Instant, Text, Whole } from '../../platform/dto';
import { EVERYONE } from './roles';

export class SignInDto {
  @Text({ max: 100 })
  name: string;

  @Text({ max: 200 })
  password: string;

  @Choice(['browser', 'script'], {
    optional: true,
    description: 'browser sets a cookie; script answers a token for the Authorization header',
  })
  kind?: 'browser' | 'script';
}

export class SwitchUserDto {
  @Id()
  userId: string;

  @Text({ min: 4, max: 12, description: 'Bench PIN' })
  pin: string;
}

export class FirstOwnerDto {
  @Text({ max: 100, description: 'The one-time token from the terminal' })
  token: string;

  @Text({ max: 100 })
  name: string;

  @Text({ min: 10, max: 200 })
  password: string;
}

export class CreateUserDto {
  @Text({ max: 100 })
  name: string;

  @Choice(EVERYONE)
  role: string;

  @Text({ min: 10, max: 200 })
  password: string;

  @Text({ min: 4, max: 12, optional: true, description: 'Bench PIN, digits' })
  pin?: string;
}

export class ChangeUserDto {
  @Choice(EVERYONE, { optional: true })
  role?: string;

  @Text({ min: 10, max: 200, optional: true })
  password?: string;

  @Text({ min: 4, max: 12, optional: true, nullable: true })
  pin?: string | null;

  @Flag({ optional: true })
  active?: boolean;
}

export class UserView {
  @Id()
  id: string;

  @Text()
  name: string;

  @Choice(EVERYONE)
  role: string;

  @Flag()
  hasPin: boolean;

  @Flag()
  active: boolean;

  @Whole()
  version: number;
}

export class SessionView {
  @Id()
  userId: string;

  @Text()
  userName: string;

  @Choice(EVERYONE)
  role: string;

  @Instant()
  expiresAt: string;

  @Text({ optional: true, description: 'Only for a script session: send it as Bearer token' })
  token?: string;
}
