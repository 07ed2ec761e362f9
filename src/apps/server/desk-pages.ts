import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { serveStatic } from '@hono/node-server/serve-static'
import { Hono } from 'hono'
import { Failure } from '#faults/failure.ts'
import { HASHED_FILE_AGE_SECONDS } from './settings.ts'

/**
 * The built pages of the hole desk, from one folder, packed as the browser understands where the build laid such beside
 * them. An address that names no file is one of the desk's own places and gets the first page; a file that is not there is
 * a plain 404.
 */
export function deskPages(webRoot: string): Hono {
  const pages = new Hono()
  const isBuilt = existsSync(join(webRoot, 'index.html'))

  pages.use(async (context, next) => {
    await next()
    if (context.res.ok) context.res.headers.set('Cache-Control', cacheControl(context.req.path))
  })
  if (isBuilt) {
    pages.get('*', serveStatic({ root: webRoot, precompressed: true }))
    const firstPage = serveStatic({ path: join(webRoot, 'index.html'), precompressed: true })
    pages.get('*', async (context, next) => {
      const isPlace = /^\/(?:[\w-]+\/?)*$/.test(context.req.path)
      return isPlace ? firstPage(context, next) : next()
    })
  } else {
    pages.get('/', () => {
      throw new Failure('MAR-SERVER-016', 'The pages of the hole desk were not built: run npm start.')
    })
  }
  return pages
}

/** Files named by their content's hash never change; everything else is asked for again each time. */
function cacheControl(path: string): string {
  const isHashed = /^\/assets\/.+-[\w-]{8,}\.[a-z0-9]+$/.test(path)
  return isHashed ? `public, max-age=${HASHED_FILE_AGE_SECONDS}, immutable` : 'no-cache'
}
