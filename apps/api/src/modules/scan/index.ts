export { ScanModule } from './scan.module';
