/** A sentence's first word, with its first letter large. */
export function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1)
}
