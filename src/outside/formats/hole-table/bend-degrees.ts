/** The angle that the note of a bend row gives, degrees; `null` when it gives none. */
export function bendDegrees(note: string): number | null {
  const degrees = /(\d+(?:[.,]\d+)?)\s*(?:°|deg|$)/i.exec(note)?.[1]
  return degrees === undefined ? null : Number(degrees.replace(',', '.'))
}
