import { once } from 'node:events'
import type { Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { Failure } from '#faults/failure.ts'
import { PORT_ATTEMPTS } from './settings.ts'

/**
 * Listens on the port or the first free one after it, and returns which. 0 takes any. Throws Failure MAR-SERVER-010
 * when all that are tried are taken, MAR-SERVER-011 when the host is not this machine's or the port is not allowed.
 */
export async function listenOnFreePort(server: Server, host: string, firstPort: number): Promise<number> {
  const lastPort = Math.min(firstPort + PORT_ATTEMPTS - 1, 65_535)
  for (let port = firstPort; port <= lastPort; port += 1) {
    try {
      server.listen(port, host)
      await once(server, 'listening')
      return (server.address() as AddressInfo).port
    } catch (error) {
      const reason = (error as NodeJS.ErrnoException).code ?? String(error)
      if (reason !== 'EADDRINUSE')
        throw new Failure(
          'MAR-SERVER-011',
          `The server cannot listen there (${reason}). Choose another address or port.`,
          `${host}:${port}`,
        )
    }
  }
  throw new Failure(
    'MAR-SERVER-010',
    `The ports ${firstPort} to ${lastPort} are all taken. Choose another port.`,
    `${host}:${firstPort}`,
  )
}
