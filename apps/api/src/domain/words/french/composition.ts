import type { Wording } from './wording';

export const composition: Wording = {
  'Little water: the ganache may be short and split. More cream or less chocolate helps.':
    'Peu d’eau : la ganache peut être courte et trancher. Plus de crème ou moins de chocolat aide.',
  'Much water: a soft set and a short life. Less cream, or part of it as syrup, helps.':
    'Beaucoup d’eau : une texture molle et une conservation courte. Moins de crème, ou une partie en sirop, aide.',
  'Little fat: it may set rubbery and taste thin. More butter or chocolate helps.':
    'Peu de matière grasse : elle peut prendre comme du caoutchouc et manquer de goût. Plus de beurre ou de chocolat aide.',
  'Much fat: it splits easily. More water phase, or less butter, helps.':
    'Beaucoup de matière grasse : elle tranche facilement. Plus de phase aqueuse, ou moins de beurre, aide.',
  'Little cocoa butter: it sets soft. More chocolate helps.':
    'Peu de beurre de cacao : la prise est molle. Plus de chocolat aide.',
  'Much cocoa butter: it sets hard and may crack. Butter in place of chocolate helps.':
    'Beaucoup de beurre de cacao : la prise est dure et peut se fendre. Du beurre à la place du chocolat aide.',
  'Little milk fat: the melt is hard. Some butter helps.':
    'Peu de matière grasse de lait : la fonte est dure. Un peu de beurre aide.',
  'Much milk fat: it stays soft and melts early. Less butter helps.':
    'Beaucoup de matière grasse de lait : elle reste molle et fond tôt. Moins de beurre aide.',
  'Little sugar: water stays free and life is short. Syrup, invert sugar or sorbitol helps.':
    'Peu de sucre : l’eau reste libre et la conservation est courte. Du sirop, du sucre inverti ou du sorbitol aide.',
  'Much sugar: sweet, and it may grain. Less sugar, or a darker chocolate, helps.':
    'Beaucoup de sucre : c’est sucré et cela peut grainer. Moins de sucre, ou un chocolat plus noir, aide.',
  'Little dry cocoa: a soft body. A darker chocolate helps.':
    'Peu de cacao sec : un corps mou. Un chocolat plus noir aide.',
  'Much dry cocoa: it thickens and may split. More cream or a lighter chocolate helps.':
    'Beaucoup de cacao sec : elle épaissit et peut trancher. Plus de crème ou un chocolat plus clair aide.',
  'Little fat for the water: a loose emulsion that keeps badly.':
    'Peu de matière grasse pour l’eau : une émulsion lâche qui se garde mal.',
  'Much fat for the water: the emulsion is near splitting. Warm liquid in small steps helps.':
    'Beaucoup de matière grasse pour l’eau : l’émulsion est près de trancher. Du liquide chaud, par petites quantités, aide.',
  'Within what is common practice.': 'Dans ce qui est l’usage.',
  'common practice, no source': 'usage courant, sans source',
  '{0} % of the weight has no stated composition. Every figure below leaves it out, and none can be relied on until it is stated.':
    '{0} % du poids n’a pas de composition indiquée. Aucun chiffre ci-dessous n’en tient compte, et aucun n’est fiable tant qu’elle n’est pas indiquée.',
  'Fat is over 60 % of fat, water and dissolved solids: the emulsion may split (from memory).':
    'La matière grasse dépasse 60 % de l’ensemble matière grasse, eau et extrait sec dissous : l’émulsion peut trancher (de mémoire).',
  'Over half of the hard fat is milk fat: no snap (from memory).':
    'Plus de la moitié de la matière grasse dure vient du lait : pas de casse nette (de mémoire).',
  'Over 30 % of the hard fat is milk fat: a soft set, tempering temperature falls (from memory).':
    'Plus de 30 % de la matière grasse dure vient du lait : prise molle, température de tempérage plus basse (de mémoire).',
  '{0} % polyols: more than 10 % added polyols need “excessive consumption may produce laxative effects” on the label (Regulation (EU) No 1169/2011, Annex III).':
    '{0} % de polyols : au-delà de 10 % de polyols ajoutés, l’étiquette doit porter « Une consommation excessive peut avoir des effets laxatifs » (règlement (UE) n° 1169/2011, annexe III).',
  'tea leaf, not pressed': 'feuilles de thé, non pressées',
  'tea-spent dewatering note': 'note sur l’égouttage des feuilles de thé',
  'tea leaf, pressed hard': 'feuilles de thé, fortement pressées',
  'tea leaf, pressed by hand': 'feuilles de thé, pressées à la main',
  'coffee grounds': 'marc de café',
  'vanilla, zest, cinnamon': 'vanille, zeste, cannelle',
  '{0} g of steam is more than the water in the pot ({1} g). Weigh before and after again.':
    '{0} g de vapeur, c’est plus que l’eau de la casserole ({1} g). Pesez de nouveau avant et après.',
  "{0} g can't leave a pot that holds {1} g.":
    '{0} g ne peuvent pas quitter une casserole qui contient {1} g.',
};
