import type { Waiting } from './navigation';

export const useWaiting = (): Waiting => ({});
