import { catalogue } from '../language/catalogue';

/** Titles of the service's problems by their stable slug; the detail comes from the service. */
export const problemMessages = catalogue('problems', {
  'not-found': ['Not found', 'Introuvable'],
  'already-exists': ['This exists already', 'Existe déjà'],
  'still-in-use': ['Still in use', 'Encore utilisé'],
  'stale-version': [
    'Someone changed this in the meantime; reload and look again',
    'Modifié entre-temps par quelqu’un d’autre ; rechargez et vérifiez',
  ],
  'idempotency-key-reused': ['This was sent before, differently', 'Déjà envoyé, autrement'],
  'not-valid': ['Something needs correcting', 'À corriger'],
  unauthorized: ['Please sign in', 'Veuillez vous identifier'],
  forbidden: ['Your role may not do this', 'Votre rôle ne le permet pas'],
});
