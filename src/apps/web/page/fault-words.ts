import type { Fault } from '#faults/fault.ts'

/** What is wrong and what to do, with its place. */
export function faultWords({ place, message, advice }: Fault): string {
  return [place === '' ? '' : `${place}:`, message, advice].filter((word) => word !== '').join(' ')
}
