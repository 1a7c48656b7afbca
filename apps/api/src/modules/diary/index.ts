export { DiaryModule } from './diary.module';
