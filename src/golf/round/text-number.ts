/** A text as a number of seven digits in base 36: two texts share one in 2.8 thousand million pairs (Fowler, Noll & Vo, FNV-1a, 32 bits). */
export function textNumber(text: string): string {
  let hash = 0x811c9dc5
  for (let at = 0; at < text.length; at++) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193)
  return (hash >>> 0).toString(36)
}
