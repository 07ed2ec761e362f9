import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { WEIGH_ACTIONS_WASM } from '../src/numbers/kernels/weigh-actions-wasm.ts'
import { bytesOf } from '../src/numbers/kernels/weigh-kernel.ts'
// @ts-expect-error: a script of the repository, without types
import { compileKernel, KERNELS, kernelModule } from '../tools/build-kernels.mjs'

describe('the committed kernels', () => {
  it.each(KERNELS as string[])('%s comes out of its source byte by byte', async (name) => {
    const built: Buffer = await compileKernel(name)
    expect(built.equals(readFileSync(new URL(`../kernels/${name}.wasm`, import.meta.url)))).toBe(true)
    const module = readFileSync(new URL(`../src/numbers/kernels/${name}-wasm.ts`, import.meta.url), 'utf8')
    expect(module).toBe(kernelModule(name, built))
  })

  it('are read from their text as they were written', () => {
    const committed = readFileSync(new URL('../kernels/weigh-actions.wasm', import.meta.url))
    expect(Buffer.from(bytesOf(WEIGH_ACTIONS_WASM)).equals(committed)).toBe(true)
  })
})
