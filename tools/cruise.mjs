// Reads who imports whom, once, for the walls and for the room graph.
import { fileURLToPath } from 'node:url'
import { cruise } from 'dependency-cruiser'
import extractTSConfig from 'dependency-cruiser/config-utl/extract-ts-config'
import rules from '../.dependency-cruiser.mjs'

/** The modules of src, test and tools with their imports, and the walls that are broken. */
export async function cruiseHouse(folders = ['src', 'test', 'tools']) {
  process.chdir(fileURLToPath(new URL('..', import.meta.url)))
  const options = { ...rules.options, ruleSet: { forbidden: rules.forbidden }, validate: true }
  const result = await cruise(folders, options, undefined, {
    tsConfig: extractTSConfig('tsconfig.base.json'),
  })
  return result.output
}
