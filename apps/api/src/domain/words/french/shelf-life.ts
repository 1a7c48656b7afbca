import type { Wording } from './wording';

export const shelfLife: Wording = {
  'refrigerate at 4–5 °C or colder; fresh goods':
    'réfrigérer à 4–5 °C ou plus froid ; produits frais',
  'cold, 16 °C or less': 'au froid, 16 °C ou moins',
  '16–18 °C, well sealed': '16–18 °C, bien fermé',
  '16–18 °C, well sealed; moulds are possible':
    '16–18 °C, bien fermé ; des moisissures sont possibles',
  '16–18 °C; limits other than growth rule':
    '16–18 °C ; d’autres limites que la croissance font règle',
  'The recipe of lot {0} states no life after thawing, so it may not be frozen.':
    'La recette du lot {0} n’indique pas de durée après décongélation ; il ne doit donc pas être congelé.',
  'Lot {0} was frozen on {1}. Freezing stops the clock once.':
    'Le lot {0} a été congelé le {1}. La congélation n’arrête le temps qu’une fois.',
  'Lot {0} is past its date ({1}): freezing brings nothing back.':
    'Le lot {0} a dépassé sa date ({1}) : la congélation n’y change rien.',
  'Lot {0} has no date, so there is no clock to stop.':
    'Le lot {0} n’a pas de date ; il n’y a donc pas de temps à arrêter.',
  'Frozen on {0} with {1} days left; on thawing it keeps {2} days at most. Until then its date stays as it was.':
    'Congelé le {0} avec {1} jours restants ; une fois décongelé, il se garde {2} jours au plus. D’ici là, sa date ne change pas.',
  'Lot {0} isn’t in the freezer on {1}, so it can’t be thawed.':
    'Le lot {0} n’est pas au congélateur le {1} ; il ne peut donc pas être décongelé.',
  'Thawed on {0}: {1} days were left when it was frozen, {2} are allowed after thawing, so {3} days from now. It may not be frozen again.':
    'Décongelé le {0} : {1} jours restaient à la congélation, {2} sont permis après décongélation, donc {3} jours à partir de maintenant. Il ne doit pas être recongelé.',
  'No storage test or measurement with a document stands behind this life. Bands are common practice. The local authority and a laboratory decide what the label may say.':
    'Aucun essai de conservation ni mesure documentée n’appuie cette durée. Les fourchettes sont d’usage courant. L’autorité locale et un laboratoire décident de ce que l’étiquette peut dire.',
  'The stated life of {0} days is cut to {1}: {2}':
    'La durée indiquée de {0} jours est ramenée à {1} : {2}',
  'A moist filling dries through a thin shell and can crack it: no thin caps, pinholes or wet rims.':
    'Un intérieur humide sèche à travers une coque mince et peut la fendre : pas de fermetures minces, de petits trous ni de bords mouillés.',
  '{0} days is longer than common practice ({1} days). It rests wholly on the document “{2}”.':
    '{0} jours dépassent l’usage courant ({1} jours). Cela repose entièrement sur le document « {2} ».',
  'Water activity is neither measured nor estimated: growth limits no number. Measure it.':
    'L’activité de l’eau n’est ni mesurée ni estimée : la croissance ne donne aucun chiffre. Mesurez-la.',
  more: 'plus',
  '{0} days': '{0} jours',
  'At the wet end of its {0} the water activity is {1}: {2} to {3}, {4}.':
    'À l’extrémité humide ({0}), l’activité de l’eau est de {1} : {2} à {3}, {4}.',
  measurement: 'mesure',
  estimate: 'estimation',
  'Mould-free life of cake at 21 °C by formula: a lower guide for sealed pieces, no promise for badly closed ones.':
    'Durée sans moisissure d’un gâteau à 21 °C d’après la formule : un repère bas pour des pièces fermées, aucune promesse pour des pièces mal fermées.',
  'log₁₀ days = 7.91 − 0.081·ERH, bakery formula':
    'log₁₀ jours = 7,91 − 0,081·HRE, formule de boulangerie',
  'Nut oil turns rancid and softens the shell: 2 to 6 months, dark and cool.':
    'L’huile des fruits à coque rancit et ramollit la coque : 2 à 6 mois, à l’abri de la lumière et au frais.',
  '{0} has no stated life: its lots will have no date to pass on.':
    '{0} n’a pas de durée indiquée : ses lots n’auront pas de date à transmettre.',
  '{0} keeps {1} days from its own making; nothing made from it keeps longer.':
    '{0} se garde {1} jours dès sa propre fabrication ; rien de ce qui en est fait ne se garde plus longtemps.',
  'recipe of the component': 'recette du composant',
  '{0}, {1}': '{0}, {1}',
  'estimated: no test stands behind it': 'estimée : aucun essai ne l’appuie',
  'a person’s choice': 'choix d’une personne',
  'The recipe states {0} days ({1}).': 'La recette indique {0} jours ({1}).',
  'this recipe version': 'cette version de la recette',
  '{0}: no life is stated; only the lots inside set a date.':
    '{0} : aucune durée n’est indiquée ; seuls les lots contenus fixent une date.',
  'Made on {0}, keeps {1} days ({2}).': 'Fabriqué le {0}, se garde {1} jours ({2}).',
  'best before': 'à consommer de préférence avant le',
  'use by': 'à consommer jusqu’au',
  'Lot {0} ({1}) has no date of its own.': 'Le lot {0} ({1}) n’a pas de date propre.',
  'Lot {0} ({1}) is {2} {3}': 'Lot {0} ({1}) : {2} {3}',
  '{0}; nothing made from it is dated later.':
    '{0} ; rien de ce qui en est fait ne porte une date plus tardive.',
  '{0}, but this item caps no date.': '{0}, mais cet article ne limite aucune date.',
  'A measured or validated life names its document: the report, its number and its day.':
    'Une durée mesurée ou validée nomme son document : le rapport, son numéro et son jour.',
  '{0} days is more than the {1} that its limits allow. {2} Shorten it, or name the test that proves it.':
    '{0} jours dépassent les {1} que ses limites permettent. {2} Raccourcissez-la, ou nommez l’essai qui la prouve.',
  'Estimate from composition (± {0}). Not a measurement and not a validated shelf life. Verify with a calibrated water-activity meter and, for the date on the label, with storage tests or a laboratory. Cream, nuts, alcohol claims and the cold chain follow the local authority.':
    'Estimation d’après la composition (± {0}). Ni une mesure ni une durée de conservation validée. Vérifiez avec un appareil d’activité de l’eau étalonné et, pour la date de l’étiquette, par des essais de conservation ou un laboratoire. Pour la crème, les fruits à coque, les mentions d’alcool et la chaîne du froid, suivez l’autorité locale.',
  'Much {0} for the water: it may crystallise, the filling turns grainy and water activity rises.':
    'Beaucoup de {0} pour l’eau : cela peut cristalliser, l’intérieur devient granuleux et l’activité de l’eau monte.',
  'A syrup’s dextrose equivalent isn’t stated: its long sugars are left out (reads high).':
    'L’équivalent dextrose d’un sirop n’est pas indiqué : ses sucres longs sont laissés de côté (lecture trop haute).',
  'Alcohol lowers water activity only while it stays in; it also disturbs some meters. Added before boiling it is taken as boiled off first.':
    'L’alcool n’abaisse l’activité de l’eau que tant qu’il y reste ; il gêne aussi certains appareils. Ajouté avant l’ébullition, il est considéré comme évaporé en premier.',
  'An ingredient without stated composition is counted as water, the worst it can be.':
    'Un ingrédient sans composition indiquée est compté comme de l’eau, le pire des cas.',
  'The model gives less than 0.70, where it was never checked.':
    'Le modèle donne moins de 0,70, où il n’a jamais été vérifié.',
  'There is nothing in the mix.': 'Il n’y a rien dans le mélange.',
  'The composition of an ingredient isn’t stated.':
    'La composition d’un ingrédient n’est pas indiquée.',
  'There is too little water for a solution (under 5 %): measure it.':
    'Il y a trop peu d’eau pour une solution (moins de 5 %) : mesurez.',
  'There is more than 15 % alcohol in the water.': 'Il y a plus de 15 % d’alcool dans l’eau.',
  'There is more than 2 mol of salt per kg of water.': 'Il y a plus de 2 mol de sel par kg d’eau.',
  'A glucose syrup of DE {0} is outside DE 20–100.':
    'Un sirop de glucose de DE {0} est en dehors de DE 20–100.',
  'Outside the model’s range: {0} No number is shown. Measure water activity with a calibrated meter.':
    'En dehors du domaine du modèle : {0} Aucun chiffre n’est montré. Mesurez l’activité de l’eau avec un appareil étalonné.',
  'There is a reading by a meter without a calibration that passed. It is shown but not used: read two saturated salts first.':
    'Il existe un relevé d’un appareil sans étalonnage réussi. Il est montré mais pas utilisé : lisez d’abord deux sels saturés.',
  'Measured {0} ± {1} on this recipe version. It holds only while ingredients and weights stay the same. It is not a storage test: dates follow the local authority.':
    'Mesuré {0} ± {1} sur cette version de la recette. Cela ne vaut que tant que les ingrédients et les poids restent les mêmes. Ce n’est pas un essai de conservation : les dates suivent l’autorité locale.',
  'Read two salts, one on each side of the values you measure (NaCl and KCl for ganache).':
    'Lisez deux sels, un de chaque côté des valeurs que vous mesurez (NaCl et KCl pour une ganache).',
  'The meter may be used.': 'L’appareil peut être utilisé.',
  'Off by more than 0.010: clean, let it warm up, read again; then have it adjusted.':
    'Écart de plus de 0,010 : nettoyez, laissez-le chauffer, lisez de nouveau ; puis faites-le régler.',
  'Not a possible reading': 'Mesure impossible',
  'Water activity is a fraction from 0 to 1: a meter that shows {0} % read {1}. Write that.':
    'L’activité de l’eau est une fraction de 0 à 1 : un appareil qui affiche {0} % a lu {1}. Notez cela.',
  'Water activity is a fraction from 0 to 1. Look at the meter again.':
    'L’activité de l’eau est une fraction de 0 à 1. Regardez de nouveau l’appareil.',
  'pH goes from 0 to 14. Look at the meter again.':
    'Le pH va de 0 à 14. Regardez de nouveau l’appareil.',
  'Humidity goes from 0 to 100 per cent. Look at the meter again.':
    'L’humidité va de 0 à 100 pour cent. Regardez de nouveau l’appareil.',
  'Degrees Brix go from 0 to 100. Look at the refractometer again.':
    'Les degrés Brix vont de 0 à 100. Regardez de nouveau le réfractomètre.',
  'No probe in a kitchen shows that: give the temperature in °C.':
    'Aucune sonde de cuisine n’affiche cela : donnez la température en °C.',
  'The humidity over saturated salts is known from 5 to 50 °C, not at {0} °C. Let the meter and the salts come to the temperature of the room, then read again.':
    'L’humidité au-dessus des sels saturés est connue de 5 à 50 °C, pas à {0} °C. Laissez l’appareil et les sels prendre la température de la pièce, puis relisez.',
};
