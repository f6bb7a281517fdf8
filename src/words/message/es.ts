import type { MessageWords } from './topics';

export const spanish: MessageWords = {
  greeting: (name) => (name ? `Hola, ${name}:` : 'Hola:'),
  lead: (title, count) =>
    `Me interesa ${title ? `«${title}»` : 'su artículo'} y tengo ${count === 1 ? 'una pregunta' : `${count} preguntas`} antes de decidirme:`,
  thanks: 'Muchas gracias por su ayuda.',
  asks: {
    'stamp-photo': '¿Podría añadir una foto nítida y de cerca del código grabado, de frente y con luz de día?',
    'made-date': '¿Cómo sabe cuándo se fabricó, y cuándo y dónde se compró?',
    origin: '¿Dónde pone el país de fabricación? Una foto de esa etiqueta ayudaría.',
    measures: '¿Podría medir el ancho, el alto y el fondo en la base, con la cinta métrica en la foto?',
    returns: '¿Acepta devoluciones, y en cuántos días?',
    purchase: '¿Tiene el recibo u otro documento de la compra?',
    payment: 'Me gustaría pagar a través de la plataforma. ¿Le parece bien?',
    part: '¿Podría añadir una foto nítida de esta parte, y se ha reparado o cambiado alguna vez?',
    parts:
      '¿Podría añadir fotos de las partes que aún no se ven (frente, reverso, base, esquinas, asas, metal, interior, código)?',
    leather: '¿Qué partes son de piel y cuáles no? Una foto de un borde sin rematar lo mostraría bien.',
    aging: '¿Podría añadir una foto con luz de día de las asas, el ribete y los remaches? ¿Se ha cambiado alguno?',
    'own-photo': '¿Podría añadir fotos del propio artículo, una de ellas con la fecha de hoy en un papel?',
    'larger-photos': '¿Podría enviar fotos más grandes, sobre todo del código, las asas y las esquinas?',
    'gone-photos': '¿Podría enviarme las fotos que antes estaban en el anuncio?',
    authorship: '¿Podría confirmar por escrito quién lo fabricó, y cómo lo sabe?',
    assurance: '¿En qué se basa: un recibo, el código o la opinión de una persona cualificada?',
    condition: '¿Podría describir cada señal de uso, con una foto de cada una?',
    description: '¿Podría describir por escrito la casa, la edad, el material, las medidas y el estado?',
    seller: '¿Ha vendido antes artículos parecidos, aquí o en otro sitio?',
    trader: '¿Vende como particular o como empresa?',
    model: '¿Cómo sabe de qué modelo se trata?',
    price: '¿Podría confirmar el precio y decirme a qué se debe?',
    changes: '¿Podría decirme por qué se cambió el anuncio?',
  },
};
