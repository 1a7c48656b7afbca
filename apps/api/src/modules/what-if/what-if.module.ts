import { Module } from '@nestjs/common';
import { ScenariosService } from './scenarios.service';
import { WhatIfController } from './what-if.controller';
import { WhatIfService } from './what-if.service';

@Module({ controllers: [WhatIfController], providers: [ScenariosService, WhatIfService] })
export class WhatIfModule {}
