import { everyScreen } from './support/every-screen';

describe('every screen in French', () => {
  everyScreen('fr-FR');
});
