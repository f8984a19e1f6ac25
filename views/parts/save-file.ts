/** Hands a file to the keeper: the browser saves it where it saves downloads. Nothing leaves the device. */
export function saveFile(content: string | Blob, name: string, type: string): void {
  const blob = typeof content === 'string' ? new Blob([content], { type: `${type};charset=utf-8` }) : content;
  const address = URL.createObjectURL(blob);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // Some browsers read the address only after the click has returned.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
