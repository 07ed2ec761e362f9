import { createInterface } from 'node:readline/promises'
import type { Person } from './ask-questions.ts'

/** The person at the terminal of this process, until `work` is done. Questions go to standard error, so that standard output holds the answer alone. */
export async function withTerminalPerson<Result>(work: (person: Person) => Promise<Result>): Promise<Result> {
  const lines = createInterface({ input: process.stdin, output: process.stderr, terminal: true })
  const broken = new AbortController()
  // Ctrl-C, and the end of the input.
  lines.once('SIGINT', () => broken.abort())
  lines.once('close', () => broken.abort())
  try {
    return await work({
      say: (words) => void process.stderr.write(words),
      ask: async (prompt) => {
        if (broken.signal.aborted) return null
        try {
          return await lines.question(prompt, { signal: broken.signal })
        } catch (error) {
          if (!broken.signal.aborted) throw error
          process.stderr.write('\n')
          return null
        }
      },
    })
  } finally {
    lines.close()
  }
}
