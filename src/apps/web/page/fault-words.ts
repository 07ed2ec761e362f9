import type { Fault } from '#faults/fault.ts'

/** What is wrong and what to do, with its place; a stroke of a kept round by its number, since nobody sees its file here. */
export function faultWords({ place, message, advice }: Fault): string {
  const said = place.replace(
    /, holes\[\d+\]\.strokes\[(\d+)\]/,
    (_, index) => `, stroke ${Number(index) + 1}`,
  )
  return [said === '' ? '' : `${said}:`, message, advice].filter((word) => word !== '').join(' ')
}
