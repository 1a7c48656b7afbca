export { counterPresence } from './counter';
export { declaredOrigins, effectivePresence, isDeclared, originsWithin } from './declared';
export { ANNEX_II, ANNEX_II_GROUPS, EXCLUSION_SOURCES, US_NINE, US_NINE_GROUPS } from './groups';
export { mentionOf, US_ALLERGEN_NAMES } from './words';
