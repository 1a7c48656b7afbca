import { Controller, Get, Header, ServiceUnavailableException } from '@nestjs/common';
import { ApiOkResponse, ApiTags } from '@nestjs/swagger';
import { SkipThrottle } from '@nestjs/throttler';
import { collectDefaultMetrics, Registry } from 'prom-client';
import { DatabaseService } from '../../platform/database/database.service';
import { Choice } from '../../platform/dto';
import { AllowReaders, Public } from '../access';

export class HealthView {
  @Choice(['ready'])
  status: string;
}

const metrics = new Registry();
collectDefaultMetrics({ register: metrics });

@ApiTags('health')
@SkipThrottle()
@Controller()
export class HealthController {
  constructor(private readonly database: DatabaseService) {}

  /** Ready when the database answers. */
  @Get('health')
  @Public()
  @ApiOkResponse({ type: HealthView })
  async health(): Promise<HealthView> {
    try {
      await this.database.client.$queryRaw`SELECT 1`;
    } catch {
      throw new ServiceUnavailableException('The database does not answer');
    }
    return { status: 'ready' };
  }

  @Get('metrics')
  @AllowReaders()
  @Header('Content-Type', 'text/plain; version=0.0.4; charset=utf-8')
  @ApiOkResponse({ description: 'Prometheus text', schema: { type: 'string' } })
  metrics(): Promise<string> {
    return metrics.metrics();
  }
}
