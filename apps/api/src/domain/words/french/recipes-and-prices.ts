import type { Wording } from './wording';

export const recipesAndPrices: Wording = {
  'Growth minima from published tables, at their best conditions. Low water activity stops growth but does not kill: Salmonella survives for months in chocolate. Ask a laboratory.':
    'Minimums de croissance tirés de tables publiées, dans les meilleures conditions. Une faible activité de l’eau arrête la croissance mais ne tue pas : les salmonelles survivent des mois dans le chocolat. Consultez un laboratoire.',
  'Order line {0} asks for {1}. Ask for more than nothing.':
    'La ligne de commande {0} demande {1}. Demandez plus que rien.',
  '{0} is asked for and nothing is known of it.': '{0} est demandé et rien n’en est connu.',
  'Nothing good comes out of {0} as its losses stand. Correct its recipe.':
    'Rien de bon ne sort de {0} avec les pertes telles qu’elles sont. Corrigez sa recette.',
  'The net price doesn’t exceed the variable cost, so no quantity earns the fixed cost back. Raise the price or lower the cost.':
    'Le prix net ne dépasse pas le coût variable ; aucune quantité ne couvre donc les frais fixes. Augmentez le prix ou baissez le coût.',
  'A margin is below 100 % of the price and a mark-up above −100 % of the cost. If more than the cost is to be added, state a mark-up.':
    'Une marge sur le prix est inférieure à 100 % et une marge sur le coût supérieure à −100 %. Pour ajouter plus que le coût, indiquez une marge sur le coût.',
  'A rule for price endings needs a step above zero and endings from zero to below it.':
    'Une règle de terminaison des prix demande un pas supérieur à zéro et des terminaisons de zéro jusqu’au-dessous de ce pas.',
  'No VAT rate for the product class “{0}” holds on {1}. Set it under Workshop after looking it up with your tax office.':
    'Aucun taux de TVA pour la classe de produits « {0} » n’est en vigueur le {1}. Indiquez-le sous Atelier après l’avoir demandé à votre administration fiscale.',
  'These lines leave nothing after their losses.':
    'Ces lignes ne laissent rien après leurs pertes.',
  'Generic figures stand in for {0}: a supplier’s specification always wins.':
    'Des valeurs génériques remplacent celles de {0} : la fiche technique d’un fournisseur l’emporte toujours.',
  'Nobody has stated the allergens of {0}: they are unknown, not absent.':
    'Personne n’a indiqué les allergènes de {0} : ils sont inconnus, pas absents.',
  'As designed. What a lot really holds follows from the lots that were weighed into it; labels are made from those.':
    'Telle que prévue. Ce qu’un lot contient vraiment dépend des lots qui y ont été pesés ; les étiquettes sont faites d’après ceux-ci.',
  'The liquid that the infusion holds back isn’t stated, so it is taken as none. Weigh before, after the boil and after straining.':
    'Le liquide retenu par l’infusion n’est pas indiqué ; il est donc compté comme nul. Pesez avant, après l’ébullition et après filtrage.',
  'The weight of a piece in this recipe isn’t known, so it counts as nothing in every figure.':
    'Le poids d’une pièce de cette recette n’est pas connu ; elle compte donc pour rien dans chaque chiffre.',
  'This recipe would contain itself: {0}. Take one of these lines out.':
    'Cette recette se contiendrait elle-même : {0}. Retirez l’une de ces lignes.',
  'Step “{0}” loses as much as goes into it, or more. Give 0 to under 100 %.':
    'L’étape « {0} » perd autant que ce qui y entre, ou plus. Indiquez de 0 à moins de 100 %.',
  'Step “{0}” loses {1} %. Give 0 to under 100 %.':
    'L’étape « {0} » perd {1} %. Indiquez de 0 à moins de 100 %.',
  'This recipe is kept by weight: ask for grams above zero.':
    'Cette recette est tenue au poids : demandez des grammes au-dessus de zéro.',
  'This recipe gives nothing as written: add lines, or state what it yields.':
    'Cette recette ne donne rien telle qu’écrite : ajoutez des lignes, ou indiquez ce qu’elle donne.',
  'Whole trays can be asked for only when the recipe names a mould.':
    'On ne peut demander des plaques entières que si la recette nomme un moule.',
  'This recipe is kept by the piece: ask for a whole number of pieces or trays.':
    'Cette recette est tenue à la pièce : demandez un nombre entier de pièces ou de plaques.',
  'professional tempering charts (H. McGee, On Food and Cooking, and a pastry-school handbook); the maker’s own curve beats them':
    'courbes professionnelles de tempérage (H. McGee, On Food and Cooking, et un manuel de pâtisserie) ; la courbe du fabricant l’emporte',
  'Melted. Hold until no lump is left, then cool while stirring.':
    'Fondu. Maintenez jusqu’à ce qu’il n’y ait plus de morceaux, puis refroidissez en remuant.',
  'Not warm enough: old crystals stay. Warm on and measure again.':
    'Pas assez chaud : d’anciens cristaux restent. Chauffez encore et mesurez de nouveau.',
  'Too hot: milk solids can lump and scorch. Take it off the heat and smell it before use.':
    'Trop chaud : l’extrait sec de lait peut former des grumeaux et brûler. Retirez du feu et sentez-le avant usage.',
  'Cool enough to seed. Warm gently to the working window.':
    'Assez froid pour ensemencer. Réchauffez doucement jusqu’à la plage de travail.',
  'Too cold: it thickens and unwanted crystals form. Melt it fully and start again.':
    'Trop froid : il épaissit et des cristaux indésirables se forment. Refondez-le entièrement et recommencez.',
  'Still too warm to form seeds. Cool on while stirring, or add seed.':
    'Encore trop chaud pour former des germes. Refroidissez en remuant, ou ensemencez.',
  'In the working window. Make a test strip: it sets with a shine within five minutes.':
    'Dans la plage de travail. Faites une bande d’essai : elle prend en cinq minutes avec du brillant.',
  'Below the working window: it thickens and traps air. Warm a little, stir, measure again.':
    'Au-dessous de la plage de travail : il épaissit et emprisonne de l’air. Chauffez un peu, remuez, mesurez de nouveau.',
  'Above the working window: the temper may be lost. Cool, test a strip on paper, and temper again if it doesn’t set with a shine.':
    'Au-dessus de la plage de travail : le tempérage peut être perdu. Refroidissez, faites une bande d’essai sur papier, et tempérez de nouveau si elle ne prend pas avec du brillant.',
};
