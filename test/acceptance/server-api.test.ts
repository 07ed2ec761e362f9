import { once } from 'node:events'
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { connect } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { DOCUMENT_KINDS } from '#apps/server/document-check.ts'
import { type RunningServer, startServer } from '#apps/server/start-server.ts'
import { openStore } from '#outside/store/open-store.ts'

// The server as a whole, over real connections, with real documents.

const examplesFolder = fileURLToPath(new URL('../../examples', import.meta.url))
const mapFile = fileURLToPath(new URL('../fixtures/courses/albany-bahamas.osm', import.meta.url))
const root = mkdtempSync(join(tmpdir(), 'marram-api-'))
const webRoot = join(root, 'web')
const courseFile = readdirSync(examplesFolder).find((file) => file.endsWith('.course.geojson')) ?? ''
let course = ''

beforeAll(() => {
  mkdirSync(webRoot)
  writeFileSync(join(webRoot, 'index.html'), '<!doctype html><title>Desk</title>')
  writeFileSync(join(root, 'private.txt'), 'not for reading')
  course = readFileSync(join(examplesFolder, courseFile), 'utf8')
})
afterAll(() => rmSync(root, { recursive: true, force: true }))

let server: RunningServer
let storePath: string
let count = 0
beforeEach(async () => {
  count += 1
  storePath = join(root, `store-${count}`, 'store.db')
  server = await startServer({ port: 0, storePath, webRoot })
})
afterEach(() => server.close())

function ask(path: string, init: RequestInit = {}): Promise<Response> {
  return fetch(`${server.address}${path}`, init)
}

function put(path: string, body: string, headers: Record<string, string> = {}): Promise<Response> {
  return ask(path, { method: 'PUT', body, headers: { 'content-type': 'application/json', ...headers } })
}

/** The whole answer to bytes that no browser would send. */
async function askRaw(request: string): Promise<string> {
  const socket = connect(server.port, '127.0.0.1')
  let answer = ''
  socket.setEncoding('utf8').on('data', (part) => {
    answer += part
  })
  socket.end(request)
  await once(socket, 'close')
  return answer
}

const PLAYER = '{"schema":"player/1","name":"Pim","hand":"left","handicapIndex":17.6}'
const DAY = '{"schema":"day/1","date":"2026-05-02","wind":{"speed_mps":4,"from_deg":250}}'

describe('documents', () => {
  it('come back letter for letter after the server was closed and started again', async () => {
    expect(await (await put('api/courses/links', course)).json()).toMatchObject({ id: 'links', revision: 1 })
    expect((await put('api/players/pim', PLAYER)).status).toBe(201)
    expect((await put('api/days/breezy', DAY)).status).toBe(201)
    await server.close()
    server = await startServer({ port: 0, storePath, webRoot })
    expect(await (await ask('api/courses/links')).text()).toBe(course)
    expect(await (await ask('api/players/pim')).text()).toBe(PLAYER)
    expect(await (await ask('api/days/breezy')).text()).toBe(DAY)
    const { courses } = (await (await ask('api/courses')).json()) as { courses: object[] }
    const name = (JSON.parse(course) as { marram: { name: string } }).marram.name
    expect(courses).toMatchObject([{ id: 'links', name, revision: 1 }])
  })

  it('of one kind are not taken for another', async () => {
    for (const [path, body] of [
      ['api/courses/x', PLAYER],
      ['api/courses/x', JSON.stringify(readFileSync(mapFile, 'utf8').slice(0, 1000))],
      ['api/players/x', DAY],
      ['api/players/x', course],
      ['api/days/x', PLAYER],
      ['api/plans/x', DAY],
      ['api/rounds/x', PLAYER],
      ['api/notes/practice', PLAYER],
      ['api/cards/x', PLAYER],
    ] as const) {
      const answer = await put(path, body)
      const { error } = (await answer.json()) as { error: { code: string; message: string; where: string } }
      expect([answer.status, error.code]).toEqual([422, expect.stringMatching(/^MAR-[A-Z]+-\d{3}$/)])
      expect(error.message.length).toBeGreaterThan(10)
    }
    const { documents } = (await (await ask('api/health')).json()) as { documents: object }
    expect(documents).toEqual(Object.fromEntries(DOCUMENT_KINDS.map((kind) => [kind, 0])))
  })

  it('that are courses with errors are refused with every fault and its place', async () => {
    const broken = JSON.parse(course) as {
      features: { properties: Record<string, unknown>; geometry: unknown }[]
    }
    const bunkers = broken.features.filter((feature) => feature.properties.golf === 'bunker')
    // Two bunkers drawn as a figure of eight.
    for (const bunker of bunkers.slice(0, 2)) {
      const [ring] = (bunker.geometry as { coordinates: [number, number][][] }).coordinates
      const [lon, lat] = ring?.[0] ?? [0, 0]
      const d = 0.0001
      bunker.geometry = {
        type: 'Polygon',
        coordinates: [
          [
            [lon, lat],
            [lon + d, lat + d],
            [lon + d, lat],
            [lon, lat + d],
            [lon, lat],
          ],
        ],
      }
    }
    const answer = await put('api/courses/links', JSON.stringify(broken))
    const body = (await answer.json()) as {
      error: { code: string }
      faults: { severity: string; place: string }[]
    }
    expect([answer.status, body.error.code]).toEqual([422, 'MAR-SERVER-009'])
    expect(body.faults.filter((fault) => fault.severity === 'error').length).toBeGreaterThanOrEqual(2)
    expect((await ask('api/courses/links')).status).toBe(404)
  })

  it('changed by two people: the second is told, the first loses nothing', async () => {
    const etag = (await put('api/players/pim', PLAYER)).headers.get('etag') ?? ''
    const first = PLAYER.replace('17.6', '16.9')
    const answers = await Promise.all([
      put('api/players/pim', first, { 'if-match': etag }),
      put('api/players/pim', PLAYER.replace('17.6', '3.1'), { 'if-match': etag }),
    ])
    const statuses = answers.map((answer) => answer.status)
    expect([...statuses].sort()).toEqual([200, 409])
    const kept = await (await ask('api/players/pim')).text()
    expect(kept).toContain(statuses[0] === 200 ? '16.9' : '3.1')
  })

  it('are taken up to the limit and refused beyond, without reading on', async () => {
    const answer = await askRaw(
      `PUT /api/players/pim HTTP/1.1\r\nHost: 127.0.0.1:${server.port}\r\nContent-Type: application/json\r\n` +
        `Content-Length: ${17 * 1024 * 1024}\r\nConnection: close\r\n\r\n{}`,
    )
    expect(answer).toMatch(/^HTTP\/1\.1 413 /)
    expect(answer).toContain('"MAR-SERVER-005"')
  })
})

describe('the samples', () => {
  it('are put into an empty store and nowhere else', async () => {
    await server.close()
    server = await startServer({ port: 0, storePath, webRoot, examplesFolder })
    const { courses } = (await (await ask('api/courses')).json()) as { courses: { id: string }[] }
    expect(courses.map(({ id }) => `${id}.course.geojson`)).toContain(courseFile)
    await ask(`api/courses/${courses[0]?.id}`, { method: 'DELETE' })
    await put('api/players/pim', PLAYER)
    await server.close()
    server = await startServer({ port: 0, storePath, webRoot, examplesFolder })
    expect((await (await ask('api/courses')).json()) as object).toMatchObject({ courses: courses.slice(1) })
  })
})

describe('strange requests', () => {
  it.each([
    '/../private.txt',
    '/%2e%2e/private.txt',
    '/..%2fprivate.txt',
    '/assets/../../private.txt',
    '/..\\private.txt',
    '//private.txt',
    '/api/courses/../../../private.txt',
  ])('never reach a file outside the pages: %s', async (path) => {
    const answer = await askRaw(
      `GET ${path} HTTP/1.1\r\nHost: 127.0.0.1:${server.port}\r\nConnection: close\r\n\r\n`,
    )
    expect(answer).toMatch(/^HTTP\/1\.1 [24]/)
    expect(answer).not.toContain('not for reading')
  })

  it.each(['evil.example', `evil.example:4173`, 'a b', '[', ''])(
    'under the host "%s" are refused',
    async (host) => {
      const answer = await askRaw(`GET /api/players HTTP/1.1\r\nHost: ${host}\r\nConnection: close\r\n\r\n`)
      expect(answer).toMatch(/^HTTP\/1\.1 4/)
      expect(answer).not.toContain('"players"')
    },
  )

  it('are answered under the names of this machine', async () => {
    for (const host of ['localhost', `localhost:${server.port}`, '127.0.0.1', `[::1]:${server.port}`]) {
      const answer = await askRaw(`GET /api/players HTTP/1.1\r\nHost: ${host}\r\nConnection: close\r\n\r\n`)
      expect(answer).toMatch(/^HTTP\/1\.1 200 /)
    }
  })
})

describe('starting', () => {
  it('takes the next free port, and serves the pages there', async () => {
    const other = await startServer({
      port: server.port,
      storePath: join(root, `other-${count}.db`),
      webRoot,
    })
    expect(other.port).toBeGreaterThan(server.port)
    expect(other.address).toBe(`http://127.0.0.1:${other.port}/`)
    expect(await (await fetch(other.address)).text()).toContain('<title>Desk</title>')
    await other.close()
  })

  it('refuses a damaged store and leaves it as it was', async () => {
    const damaged = join(root, `damaged-${count}.db`)
    writeFileSync(damaged, 'no store '.repeat(1000))
    await expect(startServer({ port: 0, storePath: damaged, webRoot })).rejects.toMatchObject({
      code: 'MAR-STORE-001',
    })
    expect(readFileSync(damaged, 'utf8')).toBe('no store '.repeat(1000))
  })

  it('lets go of the store when the address cannot be had', async () => {
    const path = join(root, `unheard-${count}.db`)
    const starting = startServer({ port: 0, host: '192.0.2.1', storePath: path, webRoot })
    await expect(starting).rejects.toMatchObject({ code: 'MAR-SERVER-011' })
    const store = await openStore(path)
    expect(await store.days.put('may', 'May', DAY)).toBe(1)
    await store.close()
  })

  it('closes though a connection was left open, and only once', async () => {
    const socket = connect(server.port, '127.0.0.1')
    await once(socket, 'connect')
    await Promise.all([server.close(), server.close()])
    await expect(ask('api/health')).rejects.toThrow()
    socket.destroy()
  })
})
