import { Failure } from '#faults/failure.ts'
import type { Machine } from './machine.ts'
import { plainText } from './plain-text.ts'

/**
 * Says why a command could not run: with `--json` as `{"error":{code,message,where}}` on standard output, else
 * one line on standard error. Anything that is not a {@link Failure} is a defect of Marram and is thrown on.
 */
export function printFailure(error: unknown, isJson: boolean, machine: Machine): void {
  if (!(error instanceof Failure)) throw error
  const { code, message, where } = error
  if (isJson) machine.out(`${JSON.stringify({ error: { code, message, where } }, null, 2)}\n`)
  else {
    const line = `${code} ${message}${where === '' ? '' : ` (${where})`}`
    machine.err(`${plainText(line, false).replaceAll('\n', ' ')}\n`)
  }
}
