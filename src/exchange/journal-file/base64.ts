/** Bytes as base64 text (RFC 4648) and back, by the functions that browsers and Node share. */

const CHUNK = 0x8000;

export function toBase64(bytes: ArrayBuffer): string {
  const view = new Uint8Array(bytes);
  const parts: string[] = [];
  for (let at = 0; at < view.length; at += CHUNK) {
    parts.push(String.fromCharCode(...view.subarray(at, at + CHUNK)));
  }
  return btoa(parts.join(''));
}

/** The bytes, or nothing when the text is not base64. */
export function fromBase64(text: string): ArrayBuffer | undefined {
  try {
    return Uint8Array.from(atob(text), (sign) => sign.charCodeAt(0)).buffer;
  } catch {
    return undefined;
  }
}
