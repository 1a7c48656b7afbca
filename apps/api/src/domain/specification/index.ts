export * from './allergen-codes';
export * from './composition';
export * from './ingredient';
export * from './language';
export * from './nutrition';
export * from './specification';
