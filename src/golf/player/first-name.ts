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
