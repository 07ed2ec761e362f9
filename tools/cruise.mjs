// Reads who imports whom, once, for the walls and for the room graph.
import { fileURLToPath } from 'node:url'
import { cruise } from 'dependency-cruiser'
import extractTSConfig from 'dependency-cruiser/config-utl/extract-ts-config'
import rules from '../.dependency-cruiser.mjs'

const HOME = fileURLToPath(new URL('..', import.meta.url))
const TYPES = fileURLToPath(new URL('../tsconfig.base.json', import.meta.url))

/** The modules of the folders under `root` with their imports, and the walls that are broken. */
export async function cruiseHouse(folders = ['src', 'test', 'tools', 'bench'], root = HOME) {
  process.chdir(root)
  const options = { ...rules.options, ruleSet: { forbidden: rules.forbidden }, validate: true }
  const result = await cruise(folders, options, undefined, {
    tsConfig: extractTSConfig(TYPES),
  })
  return result.output
}
