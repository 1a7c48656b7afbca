import { catalogue } from '../language/catalogue';

export const offlineMessages = catalogue('offline', {
  notKnown: ['It is not known whether this was booked', 'On ignore si ceci a été enregistré'],
  lookAgain: [
    'You stopped it, and then the service could not be reached. Look whether it is there before you book it again.',
    'Vous l’avez arrêté, puis le service est devenu injoignable. Vérifiez s’il y figure avant de l’enregistrer à nouveau.',
  ],
});
