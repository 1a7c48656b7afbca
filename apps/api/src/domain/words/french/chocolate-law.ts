import type { Wording } from './wording';

export const chocolateLaw: Wording = {
  'chocolate liquor': 'pâte de cacao (chocolate liquor)',
  'total milk solids': 'matière sèche totale de lait',
  'cacao fat': 'beurre de cacao',
  'nutritive carbohydrate sweetener': 'édulcorant glucidique nutritif',
  '{0} is {1} %': '{0} : {1} %',
  '{0}, at least {1} % is needed': '{0}, il faut au moins {1} %',
  '{0}, at most {1} % is allowed': '{0}, au plus {1} % est permis',
  '{0}, less than {1} % is allowed': '{0}, il faut moins de {1} %',
  'Chocolate with vegetable fats beside cocoa butter is no chocolate in this market.':
    'Avec d’autres matières grasses végétales que le beurre de cacao, ce n’est pas du chocolat sur ce marché.',
  'A chocolate inside holds vegetable fats beside cocoa butter. In this market it is a “chocolate and vegetable fat coating” and must be named so in the list.':
    'Un chocolat à l’intérieur contient d’autres matières grasses végétales que le beurre de cacao. Sur ce marché, c’est un « chocolate and vegetable fat coating » et la liste doit le nommer ainsi.',
  'No standard of identity is known here for this kind, so its name isn’t checked.':
    'Aucune norme d’identité n’est connue ici pour cette sorte ; sa dénomination n’est donc pas vérifiée.',
  'The composition of the chocolate isn’t stated in full, so its name can’t be checked.':
    'La composition du chocolat n’est pas entièrement indiquée ; sa dénomination ne peut donc pas être vérifiée.',
  'Not {0}: {1}.': 'Dénomination {0} impossible : {1}.',
  'White chocolate must be free of colours (21 CFR 163.124).':
    'Le chocolat blanc doit être sans colorant (21 CFR 163.124).',
  'filled chocolate': 'chocolat fourré',
  'praline or “a chocolate”': 'bonbon de chocolat ou praline',
  'A box that mixes chocolates with other sweets is no chocolate assortment.':
    'Une boîte qui mêle des chocolats et d’autres confiseries n’est pas un assortiment de chocolats.',
  'No shell was drawn as such, so the outer part isn’t known. A filled chocolate needs {0} % of its weight outside: weigh it and decide.':
    'Aucune coque n’a été prélevée comme telle ; la partie extérieure n’est donc pas connue. Un chocolat fourré doit avoir {0} % de son poids à l’extérieur : pesez, puis décidez.',
  'Chocolate is {0} % of the weight; the name {1} needs {2} %. Cast a thicker shell or choose another name.':
    'Le chocolat fait {0} % du poids ; la dénomination {1} demande {2} %. Moulez une coque plus épaisse ou choisissez une autre dénomination.',
  'The composition of the chocolate isn’t stated in full, so its legal name can’t be checked.':
    'La composition du chocolat n’est pas entièrement indiquée ; sa dénomination légale ne peut donc pas être vérifiée.',
  'Other edible matter is {0} %; at most 40 % is allowed.':
    'Les autres matières comestibles font {0} % ; au plus 40 % est permis.',
  'animal fat that isn’t milk fat': 'une graisse animale autre que la matière grasse de lait',
  'flour or starch': 'de la farine ou de l’amidon',
  'a flavouring that imitates chocolate or milk fat':
    'un arôme qui imite le chocolat ou la matière grasse de lait',
  'Lot {0} ({1}) is {2}, barred from chocolate.':
    'Le lot {0} ({1}) contient ce qui est exclu du chocolat : {2}.',
  'Vegetable fats are {0} % of the chocolate; at most 5 % is allowed.':
    'Les matières grasses végétales font {0} % du chocolat ; au plus 5 % est permis.',
  '{0} isn’t a fat that chocolate may hold.':
    '{0} : cette matière grasse n’est pas admise dans le chocolat.',
};
