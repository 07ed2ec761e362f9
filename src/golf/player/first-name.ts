import { ADULT_AGE } from './settings.ts'

/** Whether a player is under 18; of unstated age: no. */
export function isMinor(age: number | undefined): boolean {
  return age !== undefined && age < ADULT_AGE
}

/** The name that stands on pages: of a minor the first name only, of everybody else the name as it is written. */
export function pageName(name: string, age: number | undefined): string {
  const whole = name.trim()
  return isMinor(age) ? (whole.split(/\s+/)[0] ?? whole) : whole
}

/** The names of partners as they stand on one page: such as read alike are told apart by a number. */
export function partnerNames(
  players: readonly { readonly name: string; readonly age?: number | undefined }[],
): string[] {
  const names = players.map(({ name, age }) => pageName(name, age))
  return names.map((name, index) => {
    const alike = names.flatMap((other, place) => (other === name ? [place] : []))
    return alike.length === 1 ? name : `${name} ${alike.indexOf(index) + 1}`
  })
}
