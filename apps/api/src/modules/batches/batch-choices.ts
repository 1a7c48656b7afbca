/** What a request may say of a batch, and an answer does. */
export const BATCH_KINDS = ['cook', 'charge', 'cast', 'pack'] as const;
export const BATCH_STATES = ['open', 'finished', 'abandoned'] as const;
export const OUTPUT_ROLES = ['product', 'rework'] as const;
export const LOSS_KINDS = [
  'steam',
  'held_back',
  'scrapings',
  'rejects',
  'samples',
  'other',
] as const;
export const DRAW_ROLES = [
  'base',
  'infusion',
  'shell',
  'filling',
  'cap',
  'decoration',
  'slot',
  'packaging',
  'rework',
] as const;
export const MEASURES = [
  'temp_c',
  'humidity_percent',
  'water_activity',
  'ph',
  'brix',
  'mass_g',
] as const;
