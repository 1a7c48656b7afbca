import type { Wording } from './wording';

export const goodsOutAndQuantity: Wording = {
  'Lot {0} ({1}) is {2}: only boxes and pieces are sold.':
    'Le lot {0} ({1}) est de la sorte « {2} » : seuls les boîtes et les bonbons sont vendus.',
  'was at its date on {0}': 'était à sa date le {0}',
  'has {0} left': 'a encore {0}',
  'Lot {0} ({1}) {2}; {3} must have {4} at least. Take a fresher lot, or agree a shorter life with them and write down the reason.':
    'Le lot {0} ({1}) {2} ; {3} demande au moins {4}. Prenez un lot plus frais, ou convenez d’une durée plus courte avec le client et notez-en la raison.',
  'Only {0} of lot {1} are still out on this dispatch, but {2} came back. Look at the code on the box: it may be of another dispatch.':
    'Il ne reste que {0} du lot {1} dehors pour cette expédition, mais {2} sont revenus. Regardez le code de la boîte : elle vient peut-être d’une autre expédition.',
  'The rules cover packs from 5 g to 10 kg.':
    'Les règles valent pour des emballages de 5 g à 10 kg.',
  'Weigh at least one pack, and no more than there are.':
    'Pesez au moins un emballage, et pas plus qu’il n’y en a.',
  '{0} packs are below T2: take them out.': '{0} emballages sont au-dessous de T2 : retirez-les.',
  'The mean {0} g is below its limit {1} g.': 'La moyenne {0} g est inférieure à sa limite {1} g.',
  'Weigh every pack.': 'Pesez chaque emballage.',
  '{0} packs are below T1.': '{0} emballages sont au-dessous de T1.',
  'Weigh {0} packs.': 'Pesez {0} emballages.',
  'A batch has at most 10 000 packs: split it.':
    'Un lot contrôlé compte au plus 10 000 emballages : partagez-le.',
  'Samples have {0} packs each.': 'Les échantillons comptent {0} emballages chacun.',
  'Samples have {0} packs each, two at most.':
    'Les échantillons comptent {0} emballages chacun, deux échantillons au plus.',
  '{0} boxes take {1} of {2}, but {3} were drawn. Correct the draws or the number of boxes.':
    '{0} boîtes demandent {1} de {2}, mais {3} ont été prélevés. Corrigez les prélèvements ou le nombre de boîtes.',
  '{0} has no approved specification of this supplier.':
    '{0} n’a pas de fiche technique approuvée de ce fournisseur.',
  "The supplier doesn't say whether it contains: {0}.":
    'Le fournisseur ne dit pas s’il contient : {0}.',
  'Arrived at {0} °C; the limit is {1} °C.': 'Arrivé à {0} °C ; la limite est de {1} °C.',
  '{0}, lot {1}, is past its use-by date {2}. Refuse the line, and tell the supplier.':
    '{0}, lot {1}, a dépassé sa date limite de consommation du {2}. Refusez la ligne et prévenez le fournisseur.',
  '{0} is perishable: give the best-before or use-by date on the carton.':
    '{0} est périssable : indiquez la date de durabilité minimale ou la date limite de consommation du carton.',
  '{0} travels cold: measure its temperature on arrival and enter it.':
    '{0} voyage au froid : mesurez sa température à l’arrivée et saisissez-la.',
};
