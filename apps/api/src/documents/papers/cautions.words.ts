import type { Translated } from '../kit/language';

/** Short cautions that stand where a mistake could hurt someone. */
interface CautionWords {
  readonly allergens: string;
  readonly dates: string;
  readonly waterActivity: string;
  readonly recallScope: string;
  /** For buyers, on a notice. */
  readonly recallNotice: string;
  /** For customers who sell on, on a letter. */
  readonly recallLetter: string;
  readonly tankScope: string;
  readonly diary: string;
  readonly prices: string;
}

export const CAUTIONS: Translated<CautionWords> = {
  en: {
    allergens:
      'Read from the suppliers’ specifications and the lots as booked. Unknown is not absent. If in doubt, don’t serve; ask the workshop. Rules differ by country: follow your food authority and qualified advice.',
    dates:
      'Dates are as good as the recipe’s shelf-life record and the cold kept since. Check the goods; when in doubt, throw out.',
    waterActivity:
      'An estimated water activity is no measurement. Have the product measured before a longer life is promised.',
    recallScope:
      'This list holds what was booked. Goods that were moved, mixed or sold without a booking are not on it. Who must be told, and how fast, is decided with your food authority.',
    recallNotice:
      'Not sure whether yours is one of these? Treat it as if it were, and ask us. Unwell after eating it? See a doctor and show this notice.',
    recallLetter:
      'We list what our records show. If you have other goods of these lots, from whomever, treat them alike. Your own food authority may ask more of you.',
    tankScope:
      'In a tank, everything charged since it was last empty and clean may be in every lot after it; shares are estimates and never narrow the scope.',
    diary: 'A read-out of what was recorded. Missing readings are missing; nothing was filled in.',
    prices: 'Check VAT and price-marking rules with your authority or accountant before use.',
  },
  fr: {
    allergens:
      'Établi d’après les fiches des fournisseurs et les lots enregistrés. Inconnu ne veut pas dire absent. En cas de doute, ne pas servir ; demander à l’atelier. Les règles varient selon les pays : suivre l’autorité sanitaire et un avis qualifié.',
    dates:
      'Les dates valent ce que valent l’étude de conservation de la recette et le froid tenu depuis. Contrôler la marchandise ; en cas de doute, jeter.',
    waterActivity:
      'Une activité de l’eau estimée n’est pas une mesure. Faire mesurer le produit avant d’annoncer une durée plus longue.',
    recallScope:
      'Cette liste contient ce qui a été enregistré. Ce qui a été déplacé, mélangé ou vendu sans enregistrement n’y figure pas. Qui avertir, et sous quel délai, se décide avec l’autorité sanitaire.',
    recallNotice:
      'Un doute sur le vôtre ? Faites comme s’il était concerné et demandez-nous. Un malaise après en avoir mangé ? Consultez un médecin et montrez cet avis.',
    recallLetter:
      'Cette liste est celle de nos registres. Si vous avez d’autres produits de ces lots, d’où qu’ils viennent, traitez-les de même. Votre autorité sanitaire peut vous demander davantage.',
    tankScope:
      'Dans une cuve, tout ce qui a été chargé depuis le dernier vidage avec nettoyage peut se trouver dans chaque lot suivant ; les parts sont des estimations et ne réduisent jamais le périmètre.',
    diary: 'Extrait de ce qui a été enregistré. Un relevé manquant manque ; rien n’a été complété.',
    prices: 'Vérifier la TVA et les règles d’affichage des prix avant usage.',
  },
};
