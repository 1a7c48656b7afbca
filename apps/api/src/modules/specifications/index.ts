export { specificationOf, type StoredSpecification } from './specification-json';
export { SpecificationsModule } from './specifications.module';
export { SpecificationsService } from './specifications.service';
export { createSpecification } from './specifications.repository';
