/** A club's name as a person says it: `sand wedge`, `7-iron`. */
export function clubWords(name: string): string {
  return name.replace('-wedge', ' wedge')
}
