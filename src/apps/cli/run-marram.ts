import { CommanderError } from 'commander'
import { Failure } from '#faults/failure.ts'
import { commandLine } from './command-line.ts'
import type { Machine } from './machine.ts'
import { printJson } from './print-answer.ts'
import { printFailure } from './print-failure.ts'

/**
 * Runs one command and returns its exit code: 0 done, 1 done but the data has faults of severity error, 2 could
 * not run. Expected failures are printed; only a defect of Marram is thrown.
 */
export async function runMarram(words: readonly string[], machine: Machine): Promise<number> {
  let exitCode = 0
  const isJson = words.includes('--json')
  const say = (text: string): void => {
    if (!isJson) machine.out(text)
    else if (text.trim() === machine.version) printJson({ version: machine.version }, machine)
    else printJson({ help: text }, machine)
  }
  const done = (code: number): void => {
    exitCode = code
  }
  try {
    const program = commandLine(machine, done, say)
    if (words.every((word) => ['--json', '--quiet'].includes(word)))
      throw new Failure('MAR-USAGE-001', `No command was given. ${COMMANDS}`)
    await program.parseAsync([...words], { from: 'user' })
    return exitCode
  } catch (error) {
    const failure = error instanceof CommanderError ? usageFailure(error) : error
    if (failure === null) return 0
    printFailure(failure, isJson, machine)
    return 2
  }
}

const COMMANDS = 'Write marram --help for what there is.'

/** What the command line said was wrong, under our own code; `null` when help or the version was asked for. */
function usageFailure(error: CommanderError): Failure | null {
  if (error.code === 'commander.helpDisplayed' || error.code === 'commander.version') return null
  if (error.code === 'commander.help')
    return new Failure('MAR-USAGE-001', `No command was given. ${COMMANDS}`)
  const said = error.message
    .replace(/^error: /, '')
    .replaceAll(/\s*\n\s*/g, ' ')
    .trim()
  const sentence = `${said.charAt(0).toUpperCase()}${said.slice(1)}`
  return new Failure('MAR-USAGE-001', /[.?!)]$/.test(sentence) ? sentence : `${sentence}.`)
}
