import type { Wording } from './wording';

export const labels: Wording = {
  'A label for {0} must speak {1}.':
    'Une étiquette pour le marché {0} doit être dans cette langue : {1}.',
  'at least one language': 'au moins une langue',
  'The product has no name in {0}.': 'Le produit n’a pas de dénomination dans cette langue : {0}.',
  'The label needs the workshop’s name and an address in {0}.':
    'L’étiquette demande le nom de l’atelier et une adresse dans : {0}.',
  'The date on the label lies before the day of making.':
    'La date de l’étiquette précède le jour de fabrication.',
  'The use-by date has passed: this food may not be sold.':
    'La date limite de consommation est passée : cette denrée ne doit pas être vendue.',
  'The best-before date has passed.': 'La date de durabilité minimale est passée.',
  'A use-by date needs the storage conditions in {0}.':
    'Une date limite de consommation demande les conditions de conservation dans ces langues : {0}.',
  'The pack has no net quantity. Enter its nominal weight.':
    'L’emballage n’a pas de quantité nette. Saisissez son poids nominal.',
  'This kind of pack states a number of pieces, and none is set.':
    'Cette sorte d’emballage indique un nombre de pièces, et aucun n’est réglé.',
  '{0} has no name in {1}.': '{0} n’a pas de nom dans cette langue : {1}.',
  'The list doesn’t show {0}, which the product contains.':
    'La liste ne montre pas {0}, que le produit contient.',
  'Cocoa solids must be stated, but the composition of the chocolate isn’t known.':
    'La matière sèche de cacao doit être indiquée, mais la composition du chocolat n’est pas connue.',
  '{0} is in the lots that were used, but not in the recipe as designed.':
    'Allergène {0} : dans les lots utilisés, mais pas dans la recette telle que prévue.',
  '{0} is in the recipe as designed, but in none of the lots that were used.':
    'Allergène {0} : dans la recette telle que prévue, mais dans aucun des lots utilisés.',
  'The lot’s date {0} is later than the recipe’s life allows ({1}).':
    'La date du lot, {0}, est plus tardive que la durée de la recette ne le permet ({1}).',
  '{0} isn’t in the recipe.': '{0} n’est pas dans la recette.',
  '{0} of the recipe is missing.': '{0}, prévu par la recette, manque.',
  '{0} is {1} % instead of {2} %.': '{0} : {1} % au lieu de {2} %.',
  'The order is {0}; the recipe has {1}.': 'L’ordre est {0} ; la recette a {1}.',
  '{0} ({1})': '{0} ({1})',
  'Nutrition can’t be declared; these figures aren’t stated: {0}.':
    'La déclaration nutritionnelle est impossible ; ces valeurs ne sont pas indiquées : {0}.',
  '{0} (over {1} %)': '{0} (plus de {1} %)',
  'the ingredient that the name makes people think of':
    'l’ingrédient auquel la dénomination fait penser',
  'The label gives an origin. Say whether the primary ingredient comes from there too: {0}. If it doesn’t, its origin must be stated beside (Regulation (EU) 2018/775).':
    'L’étiquette donne une origine. Dites si l’ingrédient primaire en vient aussi : {0}. Sinon, son origine doit être indiquée à côté (règlement (UE) 2018/775).',
  'The primary ingredient, {0}, comes from elsewhere; the sentence that says so is missing in {1}.':
    'L’ingrédient primaire, {0}, vient d’ailleurs ; la phrase qui le dit manque dans ces langues : {1}.',
  'the European Union': 'l’Union européenne',
  'the United Kingdom': 'le Royaume-Uni',
  'Northern Ireland or the European Union': 'l’Irlande du Nord ou l’Union européenne',
  'any country': 'n’importe quel pays',
  'Label stock is one of: {0}.': 'Un support d’étiquettes est l’un de : {0}.',
  'These measures of the stock must be numbers: {0}.':
    'Ces mesures du support doivent être des nombres : {0}.',
  'A sheet’s page is one of: {0}.': 'La page d’une planche est l’une de : {0}.',
  'A sheet has from 1 to 50 columns and rows.': 'Une planche a de 1 à 50 colonnes et rangées.',
  'The first label must be one of the {0} on the sheet.':
    'La première étiquette doit être l’une des {0} de la planche.',
  'The labels of this sheet would overlap: the pitch is less than the label.':
    'Les étiquettes de cette planche se chevaucheraient : le pas est plus petit que l’étiquette.',
  'The grid is {0} × {1} mm and runs over the sheet of {2} × {3} mm.':
    'La grille fait {0} × {1} mm et dépasse la planche de {2} × {3} mm.',
  'A label is from {0} to {1} mm wide and high.':
    'Une étiquette fait de {0} à {1} mm de large et de haut.',
  'The margin leaves no room for the label.': 'La marge ne laisse pas de place à l’étiquette.',
};
