/** Hands a text to the browser as a file to save. */
export function saveAsFile(text: string, name: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The browser has taken the bytes once the click returned to it.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
