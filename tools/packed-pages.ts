import { readdirSync } from 'node:fs'
import { readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { promisify } from 'node:util'
import { brotliCompress, gzip } from 'node:zlib'
import type { Plugin } from 'vite'

/** After the build of the pages: lays beside each file that packing makes smaller the same as Brotli and gzip pack it, for the server to send. */
export function packedPages(): Plugin {
  let folder = ''
  return {
    name: 'packed-pages',
    apply: 'build',
    configResolved(config) {
      folder = config.build.outDir
    },
    // Last of all, since the list of the pages for the time without a server is of the pages themselves.
    closeBundle: { sequential: true, order: 'post', handler: () => packAll(folder) },
  }
}

async function packAll(folder: string): Promise<void> {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter(
    (entry) => entry.isFile() && PACKED.test(entry.name),
  )
  await Promise.all(
    files.map(async ({ parentPath, name }) => {
      const path = join(parentPath, name)
      const bytes = await readFile(path)
      await Promise.all([
        writeFile(`${path}.br`, await promisify(brotliCompress)(bytes)),
        writeFile(`${path}.gz`, await promisify(gzip)(bytes, { level: 9 })),
      ])
    }),
  )
}

/** Fonts of the web and pictures are packed already. */
const PACKED = /\.(?:js|css|html|svg|webmanifest)$/
