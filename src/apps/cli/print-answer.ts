import type { Machine } from './machine.ts'

/** Prints the one JSON document of a command. */
export function printJson(document: unknown, machine: Machine): void {
  machine.out(`${JSON.stringify(document, null, 2)}\n`)
}

/** Prints lines for a person. */
export function printLines(lines: readonly string[], machine: Machine): void {
  machine.out(`${lines.join('\n')}\n`)
}
