import { everyScreen } from './support/every-screen';

describe('every screen in English', () => {
  everyScreen('en-GB');
});
