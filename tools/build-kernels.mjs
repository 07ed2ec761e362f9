// Compiles the kernels of `kernels/` and lays their bytes beside them and, as text that Node and the browser read alike,
// into `src/numbers/kernels`.
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import asc from 'assemblyscript/asc'

/** Bytes of a compiled kernel, from its own file and those beside it that it imports. */
export async function compileKernel(name) {
  let binary = null
  const { error, stderr } = await asc.main(
    [
      ...[`${name}.ts`, '--outFile', 'kernel.wasm', '--optimizeLevel', '3', '--shrinkLevel', '0'],
      ...['--enable', 'simd,bulk-memory', '--runtime', 'stub', '--importMemory', '--noAssert'],
    ],
    {
      readFile: (file) => {
        const path = new URL(`../kernels/${file}`, import.meta.url)
        return existsSync(path) ? readFileSync(path, 'utf8') : null
      },
      writeFile: (_, bytes) => {
        binary = bytes
      },
      listFiles: () => [],
    },
  )
  if (error || !binary) throw new Error(`${name} does not compile: ${error?.message}\n${stderr.toString()}`)
  return Buffer.from(binary)
}

/** The module of the source tree that holds the bytes. */
export function kernelModule(name, bytes) {
  const constant = `${name.toUpperCase().replaceAll('-', '_')}_WASM`
  return `// Made by tools/build-kernels.mjs from kernels/${name}.ts.\n/** The compiled kernel, base64. */\nexport const ${constant}: string =\n  '${bytes.toString('base64')}'\n`
}

export const KERNELS = ['weigh-actions']

if (process.argv[1]?.endsWith('build-kernels.mjs'))
  for (const name of KERNELS) {
    const bytes = await compileKernel(name)
    writeFileSync(new URL(`../kernels/${name}.wasm`, import.meta.url), bytes)
    writeFileSync(
      new URL(`../src/numbers/kernels/${name}-wasm.ts`, import.meta.url),
      kernelModule(name, bytes),
    )
  }
