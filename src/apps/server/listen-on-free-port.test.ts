import { once } from 'node:events'
import { createServer, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { afterEach, describe, expect, it } from 'vitest'
import { listenOnFreePort } from './listen-on-free-port.ts'
import { PORT_ATTEMPTS } from './settings.ts'

const open: Server[] = []
afterEach(async () => {
  for (const server of open.splice(0)) if (server.listening) await once(server.close(), 'close')
})

function newServer(): Server {
  const server = createServer()
  open.push(server)
  return server
}

/** Takes `count` ports in a row and returns the first. */
async function takePorts(count: number): Promise<number> {
  const first = newServer().listen(0, '127.0.0.1')
  await once(first, 'listening')
  const { port } = first.address() as AddressInfo
  for (let next = port + 1; next < port + count; next += 1) {
    const server = newServer().listen(next, '127.0.0.1')
    // Taken by somebody else serves as well.
    await Promise.race([once(server, 'listening'), once(server, 'error').catch(() => null)])
  }
  return port
}

describe('listenOnFreePort', () => {
  it('takes the port asked for, or any for 0', async () => {
    const server = newServer()
    const port = await listenOnFreePort(server, '127.0.0.1', 0)
    expect(port).toBeGreaterThan(1023)
    await once(server.close(), 'close')
    expect(await listenOnFreePort(newServer(), '127.0.0.1', port)).toBe(port)
  })

  it('takes the next one when it is taken', async () => {
    const port = await takePorts(3)
    expect(await listenOnFreePort(newServer(), '127.0.0.1', port)).toBeGreaterThanOrEqual(port + 3)
  })

  it('gives up after as many as it should try', async () => {
    const port = await takePorts(PORT_ATTEMPTS)
    const listening = listenOnFreePort(newServer(), '127.0.0.1', port)
    await expect(listening).rejects.toMatchObject({ code: 'MAR-SERVER-010', where: `127.0.0.1:${port}` })
  })

  it('says so when the address is not this machine’s', async () => {
    // 192.0.2.0/24 is set apart for documentation (RFC 5737): no machine has it.
    const listening = listenOnFreePort(newServer(), '192.0.2.1', 0)
    await expect(listening).rejects.toMatchObject({ code: 'MAR-SERVER-011' })
  })
})
