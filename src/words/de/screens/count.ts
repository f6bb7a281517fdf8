/** "1 Foto", "3 Fotos". */
export const photos = (number: number): string => (number === 1 ? '1 Foto' : `${number} Fotos`);
