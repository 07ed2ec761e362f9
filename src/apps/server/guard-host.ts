import { isIP } from 'node:net'
import { hostname } from 'node:os'
import type { MiddlewareHandler } from 'hono'
import { Failure } from '#faults/failure.ts'

/**
 * Lets a request pass only if its Host is this machine and, where it says which page it came from, that page is ours.
 * Without this, a page of any site could have its own name point to 127.0.0.1 and read the pupils' data.
 */
export function guardHost(listeningHost: string): MiddlewareHandler {
  const isOwn = ownHosts(listeningHost)
  return async (context, next) => {
    const host = context.req.header('host') ?? ''
    if (!isOwn(host))
      throw new Failure(
        'MAR-SERVER-002',
        'This server answers only under the address it printed at its start.',
        host,
      )
    const origin = context.req.header('origin')
    if (origin !== undefined && origin !== `http://${host}`)
      throw new Failure('MAR-SERVER-003', 'Only the pages of this server may ask it for something.', origin)
    await next()
  }
}

/**
 * Whether a Host header names this machine. A literal address always does: only names can be pointed elsewhere. The
 * port may differ, as behind a forwarded one.
 */
export function ownHosts(listeningHost: string): (host: string) => boolean {
  const machine = hostname().toLowerCase()
  const isLocal = ['127.0.0.1', '::1', 'localhost'].includes(listeningHost)
  const names = new Set(['localhost', listeningHost.toLowerCase()])
  if (!isLocal) for (const name of [machine, `${machine}.local`]) names.add(name)
  return (host) => {
    const name = /^(.+?)(?::\d{1,5})?$/.exec(host)?.[1]?.toLowerCase() ?? ''
    const literal = /^\[(.+)\]$/.exec(name)?.[1] ?? name
    if (isLocal) return names.has(name) || literal === '::1' || (isIP(name) === 4 && name.startsWith('127.'))
    return names.has(name) || isIP(literal) !== 0
  }
}
