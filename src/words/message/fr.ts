import type { MessageWords } from './topics';

export const french: MessageWords = {
  greeting: (name) => (name ? `Bonjour ${name},` : 'Bonjour,'),
  lead: (title, count) =>
    `Je m’intéresse à ${title ? `« ${title} »` : 'votre article'} et j’aurais ${count === 1 ? 'une question' : `${count} questions`} avant de me décider :`,
  thanks: 'Merci beaucoup pour votre aide.',
  part: (part) =>
    `Pourriez-vous ajouter une photo nette de cette partie : ${part} ? A-t-elle été réparée ou remplacée ?`,
  parts: {
    body: 'l’extérieur',
    lining: 'la doublure',
    stitching: 'les coutures',
    trim: 'la bordure',
    hardware: 'les pièces métalliques',
    zip: 'la fermeture éclair',
    handle: 'les anses',
    strap: 'la bandoulière',
    base: 'le fond',
    edge: 'les tranches',
    tab: 'la languette',
    lock: 'la serrure',
    'dust-bag': 'la housse',
    pattern: 'le motif',
  },
  quote: (words) => `« ${words} »`,
  codeSits: (places) => `Il devrait se trouver ici : ${places}.`,
  asks: {
    'stamp-photo':
      'Pourriez-vous ajouter une photo nette et rapprochée du code frappé, prise de face et à la lumière du jour ?',
    'whole-stamp':
      'Pourriez-vous ajouter une photo qui montre le code frappé en entier, avec un peu de marge de tous les côtés ?',
    'made-date': 'Comment connaissez-vous la date de fabrication, et quand et où l’article a-t-il été acheté ?',
    origin: 'Où est indiqué le pays de fabrication ? Une photo de cette étiquette m’aiderait.',
    measures:
      'Pourriez-vous mesurer la largeur, la hauteur et la profondeur à la base, le mètre étant visible sur la photo ?',
    returns: 'Acceptez-vous les retours, et sous combien de jours ?',
    'not-as-described':
      'Vous écrivez que les retours ne sont pas acceptés : est-ce aussi le cas si la pièce n’est pas conforme à la description ?',
    purchase: 'Avez-vous le reçu ou un autre document de l’achat ?',
    payment: 'Je souhaite payer par l’intermédiaire du site. Cela vous convient-il ?',
    parts:
      'Pourriez-vous ajouter des photos des parties qui ne sont pas encore montrées (avant, arrière, fond, coins, anses, métal, intérieur, code) ?',
    leather:
      'Quelles parties sont en cuir et lesquelles ne le sont pas ? Une photo d’une tranche brute le montrerait bien.',
    aging:
      'Pourriez-vous ajouter une photo à la lumière du jour des anses, de la bordure et des rivets ? L’un d’eux a-t-il été remplacé ?',
    'which-one': 'Lequel des articles recevrais-je, et pourriez-vous ajouter des photos de celui-là précisément ?',
    'own-photo':
      'Pourriez-vous ajouter des photos de l’article lui-même, dont une avec la date du jour sur un papier ?',
    'larger-photos': 'Pourriez-vous envoyer des photos plus grandes, surtout du code, des anses et des coins ?',
    'gone-photos': 'Pourriez-vous m’envoyer les photos qui figuraient auparavant dans l’annonce ?',
    'what-comes':
      'Pourriez-vous me dire ce que comprend exactement la vente, et si l’article lui-même en fait partie ?',
    'remade-by': 'Pourriez-vous me dire qui l’a transformé et à partir de quoi il a été fait ?',
    authorship: 'Pourriez-vous confirmer par écrit qui l’a fabriqué, et comment vous le savez ?',
    assurance: 'Sur quoi cela repose-t-il : un reçu, le code, ou l’avis d’une personne qualifiée ?',
    condition: 'Pourriez-vous décrire chaque trace d’usage, avec une photo de chacune ?',
    description: 'Pourriez-vous indiquer par écrit la maison, l’âge, la matière, les dimensions et l’état ?',
    seller: 'Avez-vous déjà vendu des articles semblables, ici ou ailleurs ?',
    trader: 'Vendez-vous à titre privé ou professionnel ?',
    model: 'Comment savez-vous de quel modèle il s’agit ?',
    price: 'Pourriez-vous confirmer le prix, et me dire comment il s’explique ?',
    changes: 'Pourriez-vous me dire pourquoi l’annonce a été modifiée ?',
  },
  told: {
    'made-date': 'Comment connaissez-vous la date de fabrication, et où l’article a-t-il été acheté ?',
    purchase: 'Pourriez-vous ajouter une photo du document d’achat ? Les noms peuvent être masqués.',
    aging: 'Pourriez-vous ajouter une photo à la lumière du jour des anses, de la bordure et des rivets ?',
  },
  partTold: (part) => `Pourriez-vous ajouter une photo nette de cette partie : ${part} ?`,
};
