import type { PaperContext } from '@api/documents';

/** An invented workshop on an invented day. */
export const sampleContext: PaperContext = {
  language: 'en',
  workshop: {
    name: 'Atelier Lunebleue',
    addressLines: ['3 Quay Lane', '10000 Portville'],
    phone: '+00 1 23 45 67',
    email: 'bonjour@lunebleue.example',
  },
  timeZone: 'Europe/Paris',
  page: 'A4',
  createdAt: new Date('2026-11-25T13:05:00Z'),
  printedBy: 'Maud',
};
