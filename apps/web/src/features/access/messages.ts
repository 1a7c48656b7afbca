import { catalogue } from '../../shared/language/catalogue';

export const accessMessages = catalogue('access', {
  signIn: ['Sign in', 'S’identifier'],
  name: ['Name', 'Nom'],
  password: ['Password', 'Mot de passe'],
  wrong: ['Name or password is not right.', 'Nom ou mot de passe incorrect.'],
  welcome: ['Good day.', 'Bonjour.'],
  firstTitle: ['Set up the workshop', 'Créer l’atelier'],
  firstLead: [
    'You are the first here. Choose the name and the password of the owner; other people are added afterwards under Workshop.',
    'Vous êtes la première personne ici. Choisissez le nom et le mot de passe du propriétaire ; les autres s’ajoutent ensuite sous Atelier.',
  ],
  passwordHint: ['At least 10 characters.', 'Au moins 10 caractères.'],
  noToken: [
    'This page opens from the link that the service prints when it starts for the first time. Look at its terminal.',
    'Cette page s’ouvre par le lien que le service affiche à son premier démarrage. Regardez son terminal.',
  ],
  create: ['Create the owner', 'Créer le propriétaire'],
  switchTitle: ['Who takes over?', 'Qui prend la main ?'],
  switchLead: [
    'With a bench PIN another person goes on at this device. What was booked stays under the name of who booked it.',
    'Avec un code d’atelier, une autre personne continue sur cet appareil. Ce qui est saisi garde le nom de son auteur.',
  ],
  person: ['Person', 'Personne'],
  pin: ['Bench PIN', 'Code d’atelier'],
  noPins: [
    'Nobody has a bench PIN yet. The owner gives one under Workshop › People.',
    'Personne n’a encore de code d’atelier. Le propriétaire en donne un sous Atelier › Personnes.',
  ],
  takeOver: ['Take over', 'Prendre la main'],
  signOut: ['Sign out', 'Se déconnecter'],
  language: ['Français', 'English'],
  stillWaiting: [
    'Some bookings still wait on this device. They are sent when you sign in here again.',
    'Des saisies attendent encore sur cet appareil. Elles partiront quand vous vous identifierez à nouveau ici.',
  ],
});
