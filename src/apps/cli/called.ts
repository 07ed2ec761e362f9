import type { Command } from 'commander'
import type { Machine } from './machine.ts'
import { spareInputs } from './spare-inputs.ts'

/** A command: what is given to it, its options and the machine, to the exit code. */
type Runs<Given extends readonly unknown[], Options> = (
  ...given: [...Given, Options, Machine]
) => number | Promise<number>

/** Makes the action of a command from what loads it: commander hands over what is given, the command's own options and the command. */
export type Called = <Given extends readonly unknown[], Options>(
  load: () => Promise<Runs<Given, Options>>,
) => (...given: [...Given, own: unknown, command: Command]) => Promise<void>

/**
 * A command is loaded when it is called: all of them take most of a second. `done` takes the exit code of the command that
 * ran.
 */
export function calledOn(machine: Machine, done: (exitCode: number) => void): Called {
  return <Given extends readonly unknown[], Options>(load: () => Promise<Runs<Given, Options>>) =>
    async (...all: [...Given, own: unknown, command: Command]) => {
      const command = all.at(-1) as Command
      const given = all.slice(0, -2) as unknown as Given
      const options = command.optsWithGlobals()
      spareInputs(command.name(), given, options)
      const run = await load()
      done(await run(...given, options as Options, machine))
    }
}
