import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { gunzipSync } from 'node:zlib'
import type { Hono } from 'hono'
import { afterAll, beforeEach, describe, expect, it } from 'vitest'
import { Failure } from '#faults/failure.ts'
import type { Fault } from '#faults/fault.ts'
import { openStore } from '#outside/store/open-store.ts'
import type { Store } from '#outside/store/store.ts'
import { DOCUMENT_KINDS, type DocumentCheck, type DocumentKind } from './document-check.ts'
import { serverApp } from './server-app.ts'
import { BODY_LIMIT_BYTES } from './settings.ts'

const root = mkdtempSync(join(tmpdir(), 'marram-app-'))
afterAll(() => rmSync(root, { recursive: true, force: true }))
const webRoot = join(root, 'web')
mkdirSync(join(webRoot, 'assets'), { recursive: true })
for (const [file, text] of [
  ['index.html', '<!doctype html><title>Hole desk</title>'],
  ['assets/desk-Ab3_x9-Z.js', 'export const desk = 1'],
  ['assets/desk-Ab3_x9-Z.css', 'body {}'],
  ['assets/solver-Ab3_x9-Z.wasm', '\0asm'],
  ['assets/packed-Ab3_x9-Z.js', 'as it is'],
  ['assets/packed-Ab3_x9-Z.js.br', 'as Brotli packs it'],
  ['assets/packed-Ab3_x9-Z.js.gz', 'as gzip packs it'],
  ['icon.svg', '<svg xmlns="http://www.w3.org/2000/svg"/>'],
] as const)
  writeFileSync(join(webRoot, file), text)
writeFileSync(join(root, 'secret.txt'), 'not for reading')

/** A check that takes any object with a name, and faults written into the document itself. */
const check: DocumentCheck = (text, where) => {
  const document = JSON.parse(text) as { name?: string; faults?: Fault[]; defect?: boolean }
  if (document.defect) throw new TypeError('reading properties of undefined at /home/someone/file.ts:12')
  if (document.name === undefined) throw new Failure('MAR-FILE-007', 'It has no name.', where)
  return { name: document.name, faults: document.faults ?? [] }
}

function ofEach<Value>(value: Value): Readonly<Record<DocumentKind, Value>> {
  return Object.fromEntries(DOCUMENT_KINDS.map((kind) => [kind, value])) as Record<DocumentKind, Value>
}
const CHECKS = ofEach(check)

let store: Store
let app: Hono
let defects: unknown[]
let count = 0
beforeEach(async () => {
  count += 1
  defects = []
  store = await openStore(join(root, `store-${count}.db`))
  app = serverApp({
    store,
    host: '127.0.0.1',
    webRoot,
    checks: CHECKS,
    report: (defect) => defects.push(defect),
  })
  return () => store.close()
})

/** Asks the app as a browser on this machine would. */
async function ask(path: string, init: RequestInit = {}): Promise<Response> {
  const headers = new Headers(init.headers)
  if (!headers.has('host')) headers.set('host', '127.0.0.1:4173')
  return app.request(`http://127.0.0.1:4173${path}`, { ...init, headers })
}

function put(path: string, body: BodyInit, headers: Record<string, string> = {}): Promise<Response> {
  return ask(path, { method: 'PUT', body, headers: { 'content-type': 'application/json', ...headers } })
}

/** Expects a coded error, and nothing but it, and returns it. */
async function coded(
  response: Response,
  status: number,
  code: string,
): Promise<{ message: string; where: string }> {
  expect(response.status).toBe(status)
  expect(response.headers.get('content-type')).toMatch(/^application\/json/)
  const body = (await response.json()) as { error: { code: string; message: string; where: string } }
  expect(Object.keys(body.error).sort()).toEqual(['code', 'message', 'where'])
  expect(body.error.code).toBe(code)
  expect(JSON.stringify(body)).not.toMatch(/\.ts:|node_modules|at \w+ \(/)
  return body.error
}

describe.each(DOCUMENT_KINDS)('/api/%s', (kind) => {
  const path = `/api/${kind}/one`

  it('keeps, lists, gives back and removes a document', async () => {
    const first = await put(path, '{"name": "One",  "n": 1.50}')
    expect(first.status).toBe(201)
    expect(first.headers.get('etag')).toBe('"1"')
    expect(await first.json()).toEqual({ id: 'one', name: 'One', revision: 1, faults: [] })
    expect(await (await put(path, '{"name":"Uno"}')).json()).toMatchObject({ revision: 2 })
    const list = (await (await ask(`/api/${kind}`)).json()) as Record<string, unknown[]>
    expect(list[kind]).toEqual([expect.objectContaining({ id: 'one', name: 'Uno', revision: 2 })])
    const kept = await ask(path)
    expect([kept.status, kept.headers.get('etag'), await kept.text()]).toEqual([200, '"2"', '{"name":"Uno"}'])
    expect(kept.headers.get('cache-control')).toBe('no-store')
    expect((await ask(path, { method: 'DELETE' })).status).toBe(200)
    await coded(await ask(path), 404, 'MAR-SERVER-008')
    await coded(await ask(path, { method: 'DELETE' }), 404, 'MAR-SERVER-008')
  })
})

describe('a change prepared for another revision', () => {
  it('is refused and leaves what is kept', async () => {
    await put('/api/courses/one', '{"name":"First"}')
    await put('/api/courses/one', '{"name":"Second"}', { 'if-match': '"1"' })
    const late = await put('/api/courses/one', '{"name":"Late"}', { 'if-match': '"1"' })
    expect((await coded(late, 409, 'MAR-STORE-004')).where).toBe('courses/one')
    const again = await put('/api/courses/one', '{"name":"New"}', { 'if-none-match': '*' })
    await coded(again, 409, 'MAR-STORE-004')
    const removal = await ask('/api/courses/one', { method: 'DELETE', headers: { 'if-match': '"1"' } })
    await coded(removal, 409, 'MAR-STORE-004')
    expect(await (await ask('/api/courses/one')).json()).toEqual({ name: 'Second' })
  })

  it.each([
    { 'if-match': '1' },
    { 'if-match': '"0"' },
    { 'if-match': 'W/"1"' },
    { 'if-match': '*' },
    { 'if-none-match': '"1"' },
    { 'if-match': '"1"', 'if-none-match': '*' },
  ])('is refused when the revision is not as given out: %o', async (headers: Record<string, string>) => {
    await put('/api/courses/one', '{"name":"First"}')
    await coded(await put('/api/courses/one', '{"name":"x"}', headers), 400, 'MAR-SERVER-013')
    expect(await (await ask('/api/courses/one')).json()).toEqual({ name: 'First' })
  })
})

describe('a document that cannot be kept', () => {
  it.each(['A', 'a_b', '-a', 'a-', 'a--b', 'a.b', 'a%2fb', 'é', 'a'.repeat(65), '%00'])(
    'has a wrong id: %s',
    async (id) => {
      await coded(await put(`/api/players/${id}`, '{"name":"x"}'), 400, 'MAR-SERVER-007')
      expect(await store.players.list()).toEqual([])
    },
  )

  it.each(['text/plain', 'application/x-www-form-urlencoded', 'application/jsonp', ''])(
    'is declared as "%s"',
    async (type) => {
      await coded(
        await put('/api/players/one', '{"name":"x"}', { 'content-type': type }),
        415,
        'MAR-SERVER-004',
      )
    },
  )

  it.each(['application/json; charset=utf-8', 'application/geo+json', 'Application/JSON'])(
    '(but not one declared as "%s")',
    async (type) => {
      expect((await put('/api/courses/one', '{"name":"x"}', { 'content-type': type })).status).toBe(201)
    },
  )

  it('is not JSON, not whole, not UTF-8, or nothing at all', async () => {
    for (const body of ['', '{"name":', 'name=x', new Uint8Array([0x22, 0xff, 0xfe, 0x22])])
      await coded(await put('/api/players/one', body), 400, 'MAR-SERVER-006')
  })

  it('is too large, whether it says so or not', async () => {
    const large = new Uint8Array(BODY_LIMIT_BYTES + 1).fill(0x20)
    const declared = { 'content-length': String(large.length) }
    await coded(await put('/api/players/one', large, declared), 413, 'MAR-SERVER-005')
    await coded(await put('/api/players/one', large), 413, 'MAR-SERVER-005')
  })

  it('is not of its kind', async () => {
    const error = await coded(await put('/api/players/one', '{}'), 422, 'MAR-FILE-007')
    expect(error).toMatchObject({ message: 'It has no name.', where: 'players/one' })
  })

  it('has faults of severity error; they all come back', async () => {
    const fault = (severity: string, message: string): object => ({
      severity,
      code: 'MAR-FILE-003',
      message,
      place: 'hole 7',
      advice: 'Do it.',
    })
    const warning = fault('warning', 'Odd.')
    const faults = [warning, fault('error', 'Wrong.'), fault('error', 'Also.')]
    const refused = await put('/api/courses/one', JSON.stringify({ name: 'x', faults }))
    const body = (await refused.clone().json()) as { faults: unknown }
    expect(body.faults).toEqual(faults)
    expect((await refused.json()) as object).toMatchObject({
      error: { code: 'MAR-SERVER-009', where: 'hole 7' },
    })
    expect(refused.status).toBe(422)
    expect(await store.courses.list()).toEqual([])
    const kept = await put('/api/courses/one', JSON.stringify({ name: 'x', faults: [warning] }))
    expect([kept.status, await kept.json()]).toMatchObject([201, { faults: [warning] }])
  })

  it('meets a defect of ours: told to us, not to whoever asked', async () => {
    const error = await coded(await put('/api/courses/one', '{"defect":true}'), 500, 'MAR-SERVER-012')
    expect(error.message).not.toContain('someone')
    expect(defects).toEqual([expect.any(TypeError)])
  })
})

describe('a large document', () => {
  it('comes packed where the browser takes it, under the mark that a change has to name', async () => {
    const document = JSON.stringify({ name: 'Long', words: 'ground '.repeat(2000) })
    await put('/api/courses/long', document)
    const packed = await ask('/api/courses/long', { headers: { 'accept-encoding': 'gzip, deflate, br' } })
    expect(packed.headers.get('content-encoding')).toBe('gzip')
    expect(packed.headers.get('etag')).toBe('"1"')
    const bytes = new Uint8Array(await packed.arrayBuffer())
    expect(bytes.length).toBeLessThan(document.length / 4)
    expect(gunzipSync(bytes).toString()).toBe(document)
    const plain = await ask('/api/courses/long')
    expect([plain.headers.get('content-encoding'), await plain.text()]).toEqual([null, document])
  })
})

describe('an address', () => {
  it('that leads nowhere is a coded 404', async () => {
    for (const path of ['/api', '/api/', '/api/unknown', '/api/courses/one/two', '/assets/gone.js', '/x.map'])
      await coded(await ask(path), 404, 'MAR-SERVER-001')
    await coded(await ask('/', { method: 'POST' }), 404, 'MAR-SERVER-001')
  })

  it('asked with a method it does not take says which it takes', async () => {
    const response = await ask('/api/courses/one', { method: 'PATCH' })
    expect(response.headers.get('allow')).toBe('GET, HEAD, PUT, DELETE')
    await coded(response, 405, 'MAR-SERVER-014')
    await coded(await ask('/api/courses', { method: 'POST' }), 405, 'MAR-SERVER-014')
  })

  it('says how the server is', async () => {
    await put('/api/days/may', '{"name":"May"}')
    const health = await (await ask('/api/health')).json()
    expect(health).toEqual({
      status: 'ok',
      documents: { ...ofEach(0), days: 1 },
    })
  })
})

describe('the pages', () => {
  it.each([
    ['/', 'text/html; charset=utf-8', 'no-cache'],
    ['/index.html', 'text/html; charset=utf-8', 'no-cache'],
    ['/players/anna', 'text/html; charset=utf-8', 'no-cache'],
    ['/icon.svg', 'image/svg+xml; charset=utf-8', 'no-cache'],
    ['/assets/desk-Ab3_x9-Z.js', 'text/javascript; charset=utf-8', 'public, max-age=31536000, immutable'],
    ['/assets/desk-Ab3_x9-Z.css', 'text/css; charset=utf-8', 'public, max-age=31536000, immutable'],
    ['/assets/solver-Ab3_x9-Z.wasm', 'application/wasm', 'public, max-age=31536000, immutable'],
  ])('%s is %s, %s', async (path, type, cache) => {
    const response = await ask(path)
    expect(response.status).toBe(200)
    expect(response.headers.get('content-type')).toBe(type)
    expect(response.headers.get('cache-control')).toBe(cache)
    expect((await response.text()).length).toBeGreaterThan(3)
  })

  it('come packed as the browser understands, and as they are to one that understands neither', async () => {
    const sent = async (accepted: string): Promise<unknown[]> => {
      const response = await ask('/assets/packed-Ab3_x9-Z.js', { headers: { 'accept-encoding': accepted } })
      const { headers } = response
      return [headers.get('content-encoding'), headers.get('content-type'), await response.text()]
    }
    const type = 'text/javascript; charset=utf-8'
    expect(await sent('gzip, deflate, br, zstd')).toEqual(['br', type, 'as Brotli packs it'])
    expect(await sent('gzip, deflate')).toEqual(['gzip', type, 'as gzip packs it'])
    expect(await sent('identity')).toEqual([null, type, 'as it is'])
    const packed = await ask('/assets/packed-Ab3_x9-Z.js', { headers: { 'accept-encoding': 'br' } })
    expect(packed.headers.get('vary')).toBe('Accept-Encoding')
    expect(packed.headers.get('cache-control')).toContain('immutable')
  })

  it.each([
    '/../secret.txt',
    '/%2e%2e/secret.txt',
    '/..%2fsecret.txt',
    '/assets/..%5c..%5csecret.txt',
    '/%00',
  ])('never leave their folder: %s', async (path) => {
    const response = await ask(path)
    expect(await response.clone().text()).not.toContain('not for reading')
    await coded(response, 404, 'MAR-SERVER-001')
  })

  it('may run own scripts and workers and nothing else', async () => {
    const policy = (await ask('/')).headers.get('content-security-policy') ?? ''
    const rules = Object.fromEntries(policy.split('; ').map((rule) => [rule.split(' ')[0], rule]))
    expect(rules['default-src']).toBe("default-src 'none'")
    expect(rules['script-src']).toBe("script-src 'self' 'wasm-unsafe-eval'")
    expect(rules['worker-src']).toBe("worker-src 'self'")
    expect(rules['connect-src']).toBe("connect-src 'self'")
    expect(rules['style-src']).toBe("style-src 'self'")
    expect(rules['frame-ancestors']).toBe("frame-ancestors 'none'")
    expect(policy).not.toContain("'unsafe-eval'")
    for (const path of ['/', '/api/courses', '/nowhere.js'])
      expect((await ask(path)).headers.get('x-content-type-options')).toBe('nosniff')
  })

  it('that were never built are a coded 404, and the API answers all the same', async () => {
    const bare = serverApp({
      store,
      host: '127.0.0.1',
      webRoot: join(root, 'nowhere'),
      checks: CHECKS,
      report: (defect) => defects.push(defect),
    })
    const headers = { host: 'localhost:4173' }
    await coded(await bare.request('http://localhost:4173/', { headers }), 404, 'MAR-SERVER-016')
    expect((await bare.request('http://localhost:4173/api/courses', { headers })).status).toBe(200)
  })
})

describe('a request of another site', () => {
  it.each([
    'evil.example:4173',
    'evil.example',
    '127.0.0.1.evil.example',
    'localhost.evil.example',
    '192.168.0.5:4173',
    '',
  ])('is refused under the host "%s"', async (host) => {
    await coded(await ask('/api/players', { headers: { host } }), 421, 'MAR-SERVER-002')
    await coded(await ask('/', { headers: { host } }), 421, 'MAR-SERVER-002')
  })

  it('is refused by the page it comes from', async () => {
    for (const origin of ['https://evil.example', 'null', 'http://127.0.0.1:9999'])
      await coded(await put('/api/players/one', '{"name":"x"}', { origin }), 403, 'MAR-SERVER-003')
    expect(await store.players.list()).toEqual([])
    const own = { origin: 'http://127.0.0.1:4173' }
    expect((await put('/api/players/one', '{"name":"x"}', own)).status).toBe(201)
  })
})
