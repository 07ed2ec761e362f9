// Writes docs/levels.md: what is expected of a player of whom only the level is known.
import { writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { levelsPage } from './levels/levels-page.ts'

writeFileSync(fileURLToPath(new URL('../docs/levels.md', import.meta.url)), levelsPage())
