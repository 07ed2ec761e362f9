import { Failure } from '#faults/failure.ts'
import { realOf } from './real-of.ts'

/** Options that name a file to write; what is given and all others may name one that is read. */
const WRITTEN = ['out', 'picture', 'sheet']
/** Commands whose answer is the file they are given, learned on: it may take its place. */
const IN_PLACE: ReadonlySet<string> = new Set(['pattern', 'test-day', 'profile'])

/** Throws MAR-FILE-008 where a command would write over what it reads, or twice into one file. */
export function spareInputs(
  command: string,
  given: readonly unknown[],
  options: Readonly<Record<string, unknown>>,
): void {
  const taken = new Set<string>()
  for (const name of WRITTEN) {
    const path = options[name]
    if (typeof path !== 'string') continue
    const real = realOf(path)
    const others = Object.entries(options).flatMap(([other, value]) => (WRITTEN.includes(other) ? [] : value))
    const first = name === 'out' && IN_PLACE.has(command) ? given.slice(1) : given
    const isRead = [...first, ...others].flat().some((one) => typeof one === 'string' && realOf(one) === real)
    if (isRead || taken.has(real))
      throw new Failure(
        'MAR-FILE-008',
        `${isRead ? 'This file is read by the same command' : 'Two answers would be written into this file'}: choose another name for --${name}.`,
        path,
      )
    taken.add(real)
  }
}
