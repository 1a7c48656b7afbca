import type { Wording } from './wording';

export const allergensAndDeclaration: Wording = {
  'how much is not known': 'quantité inconnue',
  '{0} mg of its protein per kg': '{0} mg de ses protéines par kg',
  'no action level': 'aucun seuil d’action',
  'action level {0} mg/kg': 'seuil d’action {0} mg/kg',
  '{0} is in the product through a tank’s heel or rework ({1}). It is declared like any ingredient.':
    'Allergène {0} : présent dans le produit par un fond de cuve ou un réemploi ({1}). Il est déclaré comme tout ingrédient.',
  '{0} may be in the product ({1}). A named person must decide whether the label says so.':
    'Allergène {0} : peut-être présent dans le produit ({1}). Une personne nommée doit décider si l’étiquette le dit.',
  '{0} is left out by {1} ({2}).': 'Allergène {0} : omis par {1} ({2}).',
  '{0} can’t be left out ({1}): the amount isn’t known to be below its action level. State it, or measure.':
    'Allergène {0} : ne peut pas être omis ({1}), car rien n’établit que la quantité est inférieure à son seuil d’action. Indiquez-le, ou faites mesurer.',
  'The percentages inside {0} (lot {1}) aren’t stated in full, so it can’t be taken apart into one list. Use the nested list, or ask the supplier.':
    'Les pourcentages à l’intérieur de {0} (lot {1}) ne sont pas entièrement indiqués ; on ne peut pas le décomposer en une seule liste. Prenez la liste imbriquée, ou demandez au fournisseur.',
  'There is no finished weight, so nothing can be declared. Enter the weight.':
    'Il n’y a pas de poids fini ; rien ne peut être déclaré. Saisissez le poids.',
  'No ingredient lot is known inside this product, so it can’t be declared.':
    'Aucun lot d’ingrédient n’est connu dans ce produit ; il ne peut donc pas être déclaré.',
  'Lot {0} ({1}) has no approved specification. Approve one from the supplier’s document first.':
    'Le lot {0} ({1}) n’a pas de fiche technique approuvée. Approuvez-en d’abord une d’après le document du fournisseur.',
  'The specification of lot {0} ({1}) doesn’t say whether it holds {2}. Unknown is not absent: ask the supplier before a label is printed.':
    'La fiche technique du lot {0} ({1}) ne dit pas s’il contient : {2}. Inconnu ne veut pas dire absent : demandez au fournisseur avant d’imprimer une étiquette.',
  'Lot {0} ({1}) holds {2} ({3}), which may not be in food for the market {4}.':
    'Le lot {0} ({1}) contient {2} ({3}), qui n’est pas admis dans les denrées du marché {4}.',
  '{0} in lot {1} claims the exclusion {2} for {3}, which it doesn’t cover. The allergen is declared.':
    '{0}, dans le lot {1}, invoque l’exemption {2} pour {3}, qu’elle ne couvre pas. L’allergène est déclaré.',
  '{0} in lot {1} is called natural but isn’t stated as natural.':
    '{0}, dans le lot {1}, est dit naturel sans que cela soit indiqué sur sa fiche.',
  '{0} weighs more than twice the next of its group. Naming them together “in varying proportions” is only for mixtures in which none significantly predominates.':
    '{0} pèse plus du double du suivant de son groupe. Les nommer ensemble « en proportion variable » n’est permis que si aucun ne prédomine nettement.',
  'together they are {0} % or more of the product': 'ensemble, ils font {0} % ou plus du produit',
  '{0} has no approved specification': '{0} n’a pas de fiche technique approuvée',
  '{0} is an additive': '{0} est un additif',
  '{0} has ingredients of its own': '{0} a ses propres ingrédients',
  '{0} holds {1}, or may for all that is known':
    '{0} contient {1}, ou pourrait en contenir d’après ce qui est connu',
  '{0} aren’t listed as “and/or”: {1}.': '{0} : pas d’énumération « et/ou » ({1}).',
  'Lot {0} ({1}) is sold as chocolate and holds a colour. Chocolate itself may not be coloured; only decorations may. Ask the supplier under which name it is sold.':
    'Le lot {0} ({1}) est vendu comme chocolat et contient un colorant. Le chocolat lui-même ne doit pas être coloré ; seuls les décors le peuvent. Demandez au fournisseur sous quelle dénomination il est vendu.',
  'The glycyrrhizinic acid of {0} isn’t stated. From 4 g/kg in the product a blood-pressure warning is due: ask the supplier.':
    'La teneur en acide glycyrrhizinique de {0} n’est pas indiquée. À partir de 4 g/kg dans le produit, un avertissement sur l’hypertension est dû : demandez au fournisseur.',
  'A nutrition or health claim makes the declaration due.':
    'Une allégation nutritionnelle ou de santé rend la déclaration obligatoire.',
  'Largest surface under 25 cm² (Annex V, point 18).':
    'Plus grande face de moins de 25 cm² (annexe V, point 18).',
  'Supplied directly by the maker in small quantities (Annex V, point 19), as set.':
    'Fourni directement par le fabricant en petites quantités (annexe V, point 19), d’après votre réglage.',
  'No exemption applies (Article 9(1)(l)).':
    'Aucune exemption ne s’applique (article 9, paragraphe 1, point l)).',
  'A nutrient or health claim cancels the exemption.':
    'Une allégation nutritionnelle ou de santé annule l’exemption.',
  'Small business, 21 CFR 101.9(j), as set.':
    'Petite entreprise, 21 CFR 101.9(j), d’après votre réglage.',
  'No exemption applies (21 CFR 101.9).': 'Aucune exemption ne s’applique (21 CFR 101.9).',
};
