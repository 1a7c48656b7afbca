/** Injection token of the service's `Config`. */
export const CONFIG = Symbol('config');
