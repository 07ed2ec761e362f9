/** The address of a hole of a round; without a hole it is the first that is not finished. */
export function holePlace(id: string, ref: string): string {
  return `#/${encodeURIComponent(id)}/${encodeURIComponent(ref)}`
}
