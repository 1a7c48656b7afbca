export { WhatIfModule } from './what-if.module';
