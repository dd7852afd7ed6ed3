/** Offers text as a file to save; nothing leaves the machine. */
export function saveFile(name: string, type: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: `${type};charset=utf-8` }));
  const anchor = document.createElement('a');
  anchor.href = address;
  anchor.download = name;
  anchor.click();
  // The browser takes the file before the next turn; the address would hold it in memory for ever.
  setTimeout(() => URL.revokeObjectURL(address), 1000);
}
