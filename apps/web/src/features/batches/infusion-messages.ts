import { catalogue } from '../../shared/language/catalogue';

export const infusionMessages = catalogue('infusions', {
  open: ['Weigh an infusion back', 'Peser une infusion'],
  title: ['What the infusion took', 'Ce que l’infusion a pris'],
  lead: [
    'Three weighings tell what went off as steam, what the solids keep, and what is to be topped up.',
    'Trois pesées disent ce qui s’est évaporé, ce que les solides retiennent et ce qu’il faut rajouter.',
  ],
  solids: ['Infused lot', 'Lot infusé'],
  liquid: ['Liquid before the boil', 'Liquide avant ébullition'],
  boiled: ['After the boil, without the solids', 'Après ébullition, sans les solides'],
  strained: ['After straining', 'Après filtration'],
  solidsMass: ['Dry solids', 'Solides secs'],
  steam: ['Steam', 'Évaporation'],
  heldBack: ['Held back', 'Retenu'],
  retention: ['Kept per gram of solids', 'Retenu par gramme de solides'],
  topUp: ['Top-up to the first weight', 'Complément jusqu’au poids initial'],
  topUpHow: [
    'The top-up is a lot of its own: weigh it in like anything else, after this.',
    'Le complément est un lot à part : pesez-le ensuite comme le reste.',
  ],
  book: ['Book these losses', 'Enregistrer ces pertes'],
  what: [
    'Booked: the steam, the liquid held back, and the strained solids themselves.',
    'Enregistrés : l’évaporation, le liquide retenu et les solides filtrés.',
  ],
  label: ['Infusion of {{batch}}: {{kind}} {{mass}}', 'Infusion de {{batch}} : {{kind}} {{mass}}'],
  first: ['Write the three weighings first.', 'Notez d’abord les trois pesées.'],
});
