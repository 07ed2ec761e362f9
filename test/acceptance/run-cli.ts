import { spawnSync } from 'node:child_process'

/** The environment in which the command line runs as it was built for this run, and prints no colours. */
export const environment: NodeJS.ProcessEnv = { ...process.env, NO_COLOR: '1' }

/** What one run of the command line did. */
export interface Run {
  readonly status: number | null
  readonly out: string
  readonly err: string
}

/** Runs `marram` as a person would, in the project's folder. */
export function marram(...words: readonly string[]): Run {
  const { status, stdout, stderr } = spawnSync(process.execPath, ['bin/marram.js', ...words], {
    encoding: 'utf8',
    maxBuffer: 1 << 28,
    env: environment,
  })
  return { status, out: stdout, err: stderr }
}

/** The one JSON document on standard output; fails when there is anything else on it. */
export function marramJson(...words: readonly string[]): {
  readonly status: number | null
  readonly document: Json
} {
  const run = marram(...words, '--json')
  return { status: run.status, document: JSON.parse(run.out) as Json }
}

/** A JSON document whose fields a test looks up by name. */
// biome-ignore lint/suspicious/noExplicitAny: the tests read documents as a program outside would, without our types.
export type Json = any
