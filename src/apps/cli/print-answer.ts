import type { Machine } from './machine.ts'
import { plainText } from './plain-text.ts'

/** Prints the one JSON document of a command. */
export function printJson(document: unknown, machine: Machine): void {
  machine.out(`${JSON.stringify(document, null, 2)}\n`)
}

/** Prints lines for a person. */
export function printLines(lines: readonly string[], machine: Machine): void {
  machine.out(`${plainText(lines.join('\n'), machine.hasColour)}\n`)
}
