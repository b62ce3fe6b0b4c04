/** Gives the reader a text as a file. */
export function download(name: string, text: string, type = 'application/json'): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  document.body.append(link);
  link.click();
  link.remove();
  // The browser takes the file up in its own time.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
