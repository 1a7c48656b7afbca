import { catalogue } from '../language/catalogue';

export const infusionPlanMessages = catalogue('infusion-plan', {
  title: ['Plan the infusion', 'Prévoir l’infusion'],
  lead: [
    'The solids keep part of the liquid and steam takes more. See beforehand how much goes and what to top up.',
    'Les solides retiennent une part du liquide et la vapeur en emporte. Voyez d’avance ce qui part et ce qu’il faudra rajouter.',
  ],
  solidsOf: ['What is infused', 'Ce qui infuse'],
  liquidOf: ['In which liquid', 'Dans quel liquide'],
  solids: ['Dry solids', 'Solides secs'],
  liquid: ['Liquid', 'Liquide'],
  steam: ['Steam you expect (0: covered)', 'Évaporation prévue (0 : couvert)'],
  retention: ['Liquid kept per gram of solids', 'Liquide retenu par gramme de solides'],
  heldBack: ['Held back by the solids', 'Retenu par les solides'],
  steamed: ['Steam', 'Évaporation'],
  discarded: ['Of the first liquid, thrown away', 'Du premier liquide, jeté'],
  topUp: ['Top-up to the first weight', 'Complément jusqu’au poids initial'],
  ready: [
    'Have the top-up ready as a lot of its own, and weigh the infusion back when it is strained.',
    'Préparez le complément comme lot à part, et repesez l’infusion une fois filtrée.',
  ],
  guide: ['Usual retention', 'Rétentions usuelles'],
  guideRange: ['{{what}}: {{low}} to {{high}} g per g', '{{what}} : {{low}} à {{high}} g par g'],
});
