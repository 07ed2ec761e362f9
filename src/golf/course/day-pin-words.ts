import type { DayPin } from './day.ts'

/** `14 on, 6 left`: a hole location as a pin sheet prints it and as it is typed. */
export function dayPinWords({ yPaces, xPaces, from }: DayPin): string {
  return `${yPaces} on, ${from === 'middle' ? from : `${xPaces} ${from}`}`
}
