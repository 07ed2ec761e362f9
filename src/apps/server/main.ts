import { parseArgs } from 'node:util'
import { Failure } from '#faults/failure.ts'
import { startServer } from './start-server.ts'

// The server on its own, without the command line: for running it under another program's eye, and for the tests
// that kill it. Prints its address on one line when it answers.
const { values } = parseArgs({
  options: {
    port: { type: 'string' },
    host: { type: 'string' },
    store: { type: 'string' },
    web: { type: 'string' },
  },
})

try {
  const server = await startServer({
    storePath: values.store ?? 'marram.db',
    webRoot: values.web ?? 'dist/web',
    ...(values.port === undefined ? {} : { port: Number(values.port) }),
    ...(values.host === undefined ? {} : { host: values.host }),
  })
  console.log(server.address)
  for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => void server.close())
} catch (error) {
  if (!(error instanceof Failure)) throw error
  console.error(`${error.code}: ${error.message} (${error.where})`)
  process.exitCode = 2
}
