import { catalogue } from '../language/catalogue';

/** Names of the rooms that lie inside one place of the building. */
export const roomMessages = catalogue('rooms', {
  goodsIn: ['Goods in', 'Réception'],
  deliveries: ['Deliveries', 'Livraisons'],
  items: ['Ingredients and packaging', 'Ingrédients et emballages'],
  supply: ['Buying', 'Achats'],
  moulding: ['Moulding', 'Moulage'],
  casting: ['Casting', 'Moulages'],
  tanks: ['Tanks', 'Cuves'],
  moulds: ['Moulds', 'Moules'],
  out: ['Out', 'Départ'],
  sent: ['Sent', 'Expédié'],
  orders: ['Orders', 'Commandes'],
  plan: ['Plan', 'Planning'],
  forecast: ['Counter forecast', 'Prévision du comptoir'],
  planRules: ['How we plan', 'Nos règles'],
  trace: ['Trace', 'Traçabilité'],
  find: ['Find', 'Chercher'],
  recalls: ['Recalls', 'Rappels'],
  complaints: ['Complaints', 'Réclamations'],
});
