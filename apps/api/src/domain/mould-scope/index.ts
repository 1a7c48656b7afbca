export { mouldScope, type MouldInspection, type MouldScope, type MouldUse } from './mould-scope';
