import { type DynamicModule, Module, RequestMethod } from '@nestjs/common';
import { LoggerModule } from 'nestjs-pino';
import { AccessModule } from './modules/access';
import { BatchesModule } from './modules/batches';
import { ChangesModule } from './modules/changes';
import { ComplaintsModule } from './modules/complaints';
import { CustomersModule } from './modules/customers';
import { DeliveriesModule } from './modules/deliveries';
import { DiaryModule } from './modules/diary';
import { DispatchesModule } from './modules/dispatches';
import { ExportsModule } from './modules/exports';
import { HealthModule } from './modules/health';
import { ImportsModule } from './modules/imports';
import { InfusionsModule } from './modules/infusions';
import { ItemsModule } from './modules/items';
import { LabelsModule } from './modules/labels';
import { LotsModule } from './modules/lots';
import { LongWorkModule } from './modules/long-work';
import { LotDatesModule } from './modules/lot-dates';
import { MetersModule } from './modules/meters';
import { RecipesModule } from './modules/recipes';
import { ReferenceIngredientsModule } from './modules/reference-ingredients';
import { MouldingModule } from './modules/moulding';
import { SubstitutionsModule } from './modules/substitutions';
import { TemperingModule } from './modules/tempering';
import { MouldDesignsModule } from './modules/mould-designs';
import { MouldsModule } from './modules/moulds';
import { OrdersModule } from './modules/orders';
import { PapersModule } from './modules/papers';
import { PlacesModule } from './modules/places';
import { PlanningModule } from './modules/planning';
import { PricingModule } from './modules/pricing';
import { RecallsModule } from './modules/recalls';
import { ScanModule } from './modules/scan';
import { SpecificationsModule } from './modules/specifications';
import { StockValueModule } from './modules/stock-value';
import { SuppliersModule } from './modules/suppliers';
import { TanksModule } from './modules/tanks';
import { TracingModule } from './modules/tracing';
import { WhatIfModule } from './modules/what-if';
import { WorkshopModule } from './modules/workshop';
import type { Config } from './platform/config/config';
import type { Database } from './platform/database/prisma';
import { PlatformModule } from './platform/platform.module';

/** The slices of the service, in the order in which goods meet them. */
const slices = [
  AccessModule,
  // Before the slices whose `:tag` would take `tags.pdf` for a tag.
  PapersModule,
  WorkshopModule,
  SuppliersModule,
  CustomersModule,
  PlacesModule,
  ItemsModule,
  SpecificationsModule,
  DeliveriesModule,
  LotsModule,
  ReferenceIngredientsModule,
  RecipesModule,
  MetersModule,
  LotDatesModule,
  ImportsModule,
  LongWorkModule,
  ChangesModule,
  MouldDesignsModule,
  MouldsModule,
  TanksModule,
  BatchesModule,
  TemperingModule,
  InfusionsModule,
  SubstitutionsModule,
  MouldingModule,
  DispatchesModule,
  StockValueModule,
  PricingModule,
  WhatIfModule,
  OrdersModule,
  PlanningModule,
  DiaryModule,
  ScanModule,
  TracingModule,
  LabelsModule,
  RecallsModule,
  ComplaintsModule,
  ExportsModule,
  HealthModule,
];

/** Asked every few seconds by every screen and watchdog: a log of it would bury the rest. */
const UNLOGGED = new Set(['/api/health', '/api/changes']);

const logging = (level: string) =>
  LoggerModule.forRoot({
    forRoutes: [{ path: '{*path}', method: RequestMethod.ALL }],
    pinoHttp: {
      level,
      autoLogging: { ignore: ({ url = '' }) => UNLOGGED.has(url) },
      redact: ['req.headers.cookie', 'req.headers.authorization', 'res.headers["set-cookie"]'],
    },
  });

@Module({})
export class AppModule {
  static with(config: Config, database: Database): DynamicModule {
    return {
      module: AppModule,
      imports: [logging(config.logLevel), PlatformModule.with(config, database), ...slices],
    };
  }
}
