import { catalogue } from '../language/catalogue';

export const roomCheckMessages = catalogue('room-check', {
  open: ['Out of the cold?', 'Sortir du froid ?'],
  title: ['May it come out of the cold?', 'Peut-on le sortir du froid ?'],
  lead: [
    'Cold chocolate in damp air gets wet, and its sugar blooms. Read the room before you unpack.',
    'Le chocolat froid dans l’air humide se mouille, et le sucre blanchit. Mesurez la pièce avant de déballer.',
  ],
  product: ['The product’s temperature', 'Température du produit'],
  room: ['The room’s temperature', 'Température de la pièce'],
  humidity: ['The room’s humidity', 'Humidité de la pièce'],
  dewPoint: ['Dew point of the room', 'Point de rosée de la pièce'],
  wet: ['water settles on it', 'l’eau s’y dépose'],
  dry: ['stays dry', 'reste sec'],
  wetAdvice: [
    'Leave it closed in its wrapping until it is warmer than {{dew}} °C, then unpack it. Or dry the room.',
    'Laissez-le fermé dans son emballage jusqu’à ce qu’il dépasse {{dew}} °C, puis déballez. Ou asséchez l’air de la pièce.',
  ],
  dryAdvice: [
    'It is warmer than the dew point, so no water settles on it in this room.',
    'Il est plus chaud que le point de rosée : l’eau ne s’y dépose pas dans cette pièce.',
  ],
  caution: [
    'Reckoned from three readings: look at the first piece before you unpack the rest.',
    'Calculé d’après trois relevés : regardez la première pièce avant de déballer le reste.',
  ],
});
