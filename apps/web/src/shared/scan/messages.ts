import { catalogue } from '../language/catalogue';

export const scanMessages = catalogue('scan', {
  label: ['Scan or type a code', 'Scanner ou saisir un code'],
  hint: ['Press / to come here', 'Touche / pour venir ici'],
  camera: ['Scan with the camera', 'Scanner avec la caméra'],
  open: ['Open', 'Ouvrir'],
  close: ['Close', 'Fermer'],
  aim: ['Hold the code in front of the camera.', 'Placez le code devant la caméra.'],
  noCamera: [
    'The camera could not be used: {{reason}}. Type the code instead.',
    'La caméra n’a pas pu être utilisée : {{reason}}. Saisissez le code.',
  ],
  view: ['Camera picture', 'Image de la caméra'],
});
