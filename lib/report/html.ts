/** Makes text fit for HTML, in content and in attribute values. */
export function escapeHtml(text: string): string {
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
}

/** `1 note`, `3 notes`. */
export function counted(number: number, what: string): string {
  return `${number} ${what}${number === 1 ? '' : 's'}`
}

/** What a content security policy calls an inline style or script: `'sha256-…'`. */
export async function hashOf(text: string): Promise<string> {
  const digest = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text))
  return `'sha256-${btoa(String.fromCharCode(...new Uint8Array(digest)))}'`
}
