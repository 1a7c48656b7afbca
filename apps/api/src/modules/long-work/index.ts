export { LongWorkModule } from './long-work.module';
