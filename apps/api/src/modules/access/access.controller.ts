import {
  Body,
  Controller,
  Delete,
  Get,
  HttpCode,
  Inject,
  Param,
  ParseUUIDPipe,
  Patch,
  Post,
  Req,
  Res,
  UseGuards,
} from '@nestjs/common';
import { ApiCreatedResponse, ApiNoContentResponse, ApiOkResponse, ApiTags } from '@nestjs/swagger';
import { ThrottlerGuard } from '@nestjs/throttler';
import type { Request, Response } from 'express';
import type { Config } from '../../platform/config/config';
import { CONFIG } from '../../platform/config/config.token';
import { ProblemError } from '../../platform/problems';
import { IfMatch } from '../../platform/requests/if-match';
import {
  ChangeUserDto,
  CreateUserDto,
  FirstOwnerDto,
  SessionView,
  SignInDto,
  SwitchUserDto,
  UserView,
} from './access.dto';
import { FirstOwnerService } from './first-owner.service';
import { Allow, AllowReaders, Public } from './roles';
import { cookieOptions, SESSION_COOKIE, sessionTokenOf } from './session-token';
import type { OpenSession } from './access.repository';
import { SessionService } from './session.service';
import { UsersService } from './users.service';
import { say } from '../../domain/words/say';

const sessionView = (session: OpenSession): SessionView => ({
  userId: session.userId,
  userName: session.userName,
  role: session.role,
  expiresAt: session.expiresAt.toISOString(),
});

@ApiTags('session')
@Controller('session')
export class SessionController {
  constructor(
    private readonly sessions: SessionService,
    private readonly firstOwner: FirstOwnerService,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  @Get()
  @AllowReaders()
  @ApiOkResponse({ type: SessionView })
  async whoAmI(@Req() request: Request): Promise<SessionView> {
    const session = await this.sessions.of(sessionTokenOf(request));
    if (session === undefined)
      throw new ProblemError('not-signed-in', 401, say`Not signed in`, say`Sign in and try again.`);
    return sessionView(session);
  }

  @Post()
  @Public()
  @UseGuards(ThrottlerGuard)
  @ApiCreatedResponse({ type: SessionView })
  async signIn(
    @Body() dto: SignInDto,
    @Res({ passthrough: true }) response: Response,
  ): Promise<SessionView> {
    const kind = dto.kind ?? 'browser';
    const { token, session } = await this.sessions.signIn(dto.name, dto.password, kind);
    if (kind === 'script') return { ...sessionView(session), token };
    return this.withCookie(response, token, session);
  }

  @Post('switch')
  @AllowReaders()
  @UseGuards(ThrottlerGuard)
  @ApiCreatedResponse({ type: SessionView })
  async switchUser(
    @Body() dto: SwitchUserDto,
    @Req() request: Request,
    @Res({ passthrough: true }) response: Response,
  ): Promise<SessionView> {
    const { token, session } = await this.sessions.switchTo(dto.userId, dto.pin);
    await this.sessions.end(sessionTokenOf(request));
    return this.withCookie(response, token, session);
  }

  @Post('first-owner')
  @Public()
  @UseGuards(ThrottlerGuard)
  @ApiCreatedResponse({ type: SessionView })
  async createFirstOwner(
    @Body() dto: FirstOwnerDto,
    @Res({ passthrough: true }) response: Response,
  ): Promise<SessionView> {
    await this.firstOwner.accept(dto);
    const { token, session } = await this.sessions.signIn(dto.name, dto.password, 'browser');
    return this.withCookie(response, token, session);
  }

  @Delete()
  @AllowReaders()
  @HttpCode(204)
  @ApiNoContentResponse()
  async signOut(
    @Req() request: Request,
    @Res({ passthrough: true }) response: Response,
  ): Promise<void> {
    await this.sessions.end(sessionTokenOf(request));
    response.clearCookie(SESSION_COOKIE, { path: '/' });
  }

  private withCookie(response: Response, token: string, session: OpenSession): SessionView {
    response.cookie(
      SESSION_COOKIE,
      token,
      cookieOptions(this.config.secureCookies, session.expiresAt),
    );
    return sessionView(session);
  }
}

@ApiTags('users')
@Controller('users')
export class UsersController {
  constructor(private readonly users: UsersService) {}

  @Get()
  @AllowReaders()
  @ApiOkResponse({ type: [UserView] })
  list(): Promise<UserView[]> {
    return this.users.list();
  }

  @Post()
  @Allow()
  @ApiCreatedResponse({ type: UserView })
  create(@Body() dto: CreateUserDto): Promise<UserView> {
    return this.users.create(dto);
  }

  @Patch(':id')
  @Allow()
  @ApiOkResponse({ type: UserView })
  change(
    @Param('id', ParseUUIDPipe) id: string,
    @IfMatch() seen: number,
    @Body() dto: ChangeUserDto,
  ): Promise<UserView> {
    return this.users.change(id, seen, dto);
  }
}
