/** Hands a text to the browser as a file to save. */
export function saveAsFile(text: string, name: string, type = 'application/json'): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The browser has taken the bytes once the click returned to it.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
