/** A sentence as lines of at most so many letters, cut between words; a longer word stands alone. */
export function textLines(sentence: string, most: number): string[] {
  if (sentence.length <= most) return [sentence]
  const last = sentence.lastIndexOf(' ', most)
  const cut = last > 0 ? last : sentence.indexOf(' ')
  if (cut < 0) return [sentence]
  return [sentence.slice(0, cut), ...textLines(sentence.slice(cut + 1), most)]
}
