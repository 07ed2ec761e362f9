import { type Context, Hono } from 'hono'
import { bodyLimit } from 'hono/body-limit'
import { Failure } from '#faults/failure.ts'
import type { RevisionCondition, Shelf } from '#outside/store/store.ts'
import type { DocumentCheck, DocumentKind } from './document-check.ts'
import { BODY_LIMIT_BYTES } from './settings.ts'

/**
 * The addresses of one kind of document: `/` lists, `/:id` gets, puts and deletes. The revision travels as ETag; a
 * change with `If-Match: "3"` happens only if revision 3 is kept now, with `If-None-Match: *` only if there is none.
 */
export function documentRoutes(kind: DocumentKind, shelf: Shelf, check: DocumentCheck): Hono {
  const routes = new Hono()

  routes.get('/', async (context) => context.json({ [kind]: await shelf.list() }))

  routes.get('/:id', async (context) => {
    const id = idOf(context, kind)
    const kept = await shelf.get(id)
    if (kept === null) throw nothingThere(kind, id)
    context.header('Content-Type', 'application/json; charset=utf-8')
    context.header('ETag', `"${kept.revision}"`)
    return context.body(kept.document)
  })

  routes.put('/:id', takeJson, async (context) => {
    const id = idOf(context, kind)
    const where = `${kind}/${id}`
    const condition = conditionOf(context, where)
    const text = jsonText(await context.req.arrayBuffer(), where)
    const { name, faults } = check(text, where)
    const errors = faults.filter((fault) => fault.severity === 'error')
    const [first] = errors
    if (first !== undefined) {
      const message = `The course was not kept: ${errors.length} of its faults must be put right first. The first: ${first.message}`
      return context.json({ error: { code: 'MAR-SERVER-009', message, where: first.place }, faults }, 422)
    }
    const revision = await shelf.put(id, name, text, condition)
    context.header('ETag', `"${revision}"`)
    return context.json({ id, name, revision, faults }, revision === 1 ? 201 : 200)
  })

  routes.delete('/:id', async (context) => {
    const id = idOf(context, kind)
    const wasThere = await shelf.remove(id, conditionOf(context, `${kind}/${id}`))
    if (!wasThere) throw nothingThere(kind, id)
    return context.json({ id })
  })

  routes.all('/', (context) => refuseMethod(context, 'GET, HEAD'))
  routes.all('/:id', (context) => refuseMethod(context, 'GET, HEAD, PUT, DELETE'))
  return routes
}

/** Refuses what is too large, or not declared as JSON, before reading it. */
const limitBody = bodyLimit({
  maxSize: BODY_LIMIT_BYTES,
  onError: () => {
    throw new Failure('MAR-SERVER-005', `A document may have at most ${BODY_LIMIT_BYTES / 1024 ** 2} MB.`)
  },
})

const takeJson: typeof limitBody = async (context, next) => {
  const [type = ''] = (context.req.header('content-type') ?? '').toLowerCase().split(';')
  if (!/^application\/(?:[\w.-]+\+)?json$/.test(type.trim()))
    throw new Failure('MAR-SERVER-004', 'Send the document as application/json.', type.trim())
  return limitBody(context, next)
}

function idOf(context: Context, kind: DocumentKind): string {
  const id = context.req.param('id') ?? ''
  if (id.length > 64 || !/^[a-z0-9]+(?:-[a-z0-9]+)*$/.test(id))
    throw new Failure(
      'MAR-SERVER-007',
      'An id is made of small letters, digits and single hyphens, 64 at most.',
      `${kind}/${id.slice(0, 80)}`,
    )
  return id
}

function conditionOf(context: Context, where: string): RevisionCondition {
  const match = context.req.header('if-match')
  const noneMatch = context.req.header('if-none-match')
  if (match === undefined && noneMatch === undefined) return {}
  if (match === undefined && noneMatch === '*') return { expectedRevision: 0 }
  const revision = /^"([1-9]\d{0,9})"$/.exec(match ?? '')?.[1]
  if (revision === undefined || noneMatch !== undefined)
    throw new Failure(
      'MAR-SERVER-013',
      'Give the revision as it came: If-Match with the ETag of the document, or If-None-Match: * for a new one.',
      where,
    )
  return { expectedRevision: Number(revision) }
}

function jsonText(body: ArrayBuffer, where: string): string {
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(body)
    JSON.parse(text)
    return text
  } catch {
    throw new Failure('MAR-SERVER-006', 'The document is not complete JSON in UTF-8.', where)
  }
}

function nothingThere(kind: DocumentKind, id: string): Failure {
  return new Failure('MAR-SERVER-008', 'There is no document with this id.', `${kind}/${id}`)
}

function refuseMethod(context: Context, allowed: string): never {
  context.header('Allow', allowed)
  throw new Failure('MAR-SERVER-014', `This address takes ${allowed}.`, context.req.path)
}
